package org.bandtrail.siteinstalls.proposals;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.cutting.FastenerCount;
import org.bandtrail.siteinstalls.cutting.GuardStandOff;
import org.bandtrail.siteinstalls.cutting.MeshLength;
import org.bandtrail.siteinstalls.cutting.TapeLength;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.girths.GirthDoubt;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.CutLengths;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;

/**
 * What one band takes.
 *
 * @param girth of the trunk
 * @param tape length to cut
 * @param mesh length to cut
 * @param standOff of the guard on a round trunk, with the seam of the policy
 * @param fasteners pins
 * @param height above ground
 * @param policyVersion the version it follows
 * @param formula the calculation with its numbers, in millimetres
 * @param cautions short sentences for the place of work
 */
public record Proposal(
        Length girth,
        Length tape,
        Length mesh,
        Length standOff,
        Pieces fasteners,
        Length height,
        int policyVersion,
        String formula,
        List<String> cautions) {
    private static final List<String> ALWAYS = List.of(
            "Ask for the landowner's consent, and keep to local codes and permits.",
            "Scrape loose bark and moss first; nothing sticky goes directly on the bark.",
            "Wear gloves and eye protection: cut mesh has sharp edges. Bend its edges in to the bark, above and below.",
            "A stuck animal: do not pull it off. Cover the sticky surface and call a licensed wildlife rehabilitator.");

    /** Keeps its own copy. */
    public Proposal {
        cautions = List.copyOf(cautions);
    }

    /**
     * Calculates a proposal.
     *
     * @param girth above zero
     * @param measure in whose steps the lengths are rounded up
     * @throws IllegalArgumentException if the girth is not above zero
     */
    public static Proposal of(Length girth, CutPolicyVersion policy, TapeMeasure measure) {
        CutLengths values = policy.values();
        Length tape =
                TapeLength.of(girth, values.tape().overlap(), values.tape().tab(), measure);
        Length mesh = MeshLength.of(girth, values.mesh().extra(), measure);
        Length standOff = GuardStandOff.of(mesh, values.setup().seam(), girth);
        Pieces fasteners = FastenerCount.of(
                girth, values.fasteners().spacing(), values.fasteners().minimum());
        return new Proposal(
                girth,
                tape,
                mesh,
                standOff,
                fasteners,
                values.height().usual(),
                policy.version(),
                formula(girth, tape, mesh, standOff, fasteners, values),
                cautions(girth, standOff, values));
    }

    /**
     * Calculates a proposal for a girth as somebody wrote it; a doubt about the girth comes first among the cautions.
     *
     * @param written as typed
     * @param measure in whose steps the lengths are rounded up
     */
    public static Proposal of(WrittenGirth written, CutPolicyVersion policy, TapeMeasure measure) {
        Proposal proposal = of(written.girth(), policy, measure);
        return GirthDoubt.about(written, null, policy.values().girth())
                .filter(doubt -> doubt.kind() == GirthDoubt.Kind.IMPLAUSIBLE)
                .map(doubt -> proposal.withFirst(doubt.message()))
                .orElse(proposal);
    }

    private Proposal withFirst(String caution) {
        List<String> longer = new ArrayList<>(cautions);
        longer.addFirst(caution);
        return new Proposal(girth, tape, mesh, standOff, fasteners, height, policyVersion, formula, longer);
    }

    private static String formula(
            Length girth, Length tape, Length mesh, Length standOff, Pieces fasteners, CutLengths values) {
        Length seam = values.setup().seam();
        return "tape = girth %d + overlap %d + 2 x tab %d = %d, rounded up to %d mm; "
                        .formatted(
                                girth.mm(),
                                values.tape().overlap().mm(),
                                values.tape().tab().mm(),
                                girth.mm()
                                        + values.tape().overlap().mm()
                                        + 2 * values.tape().tab().mm(),
                                tape.mm())
                + "mesh = girth %d + %d, rounded up to %d mm; "
                        .formatted(girth.mm(), values.mesh().extra().mm(), mesh.mm())
                + "stand-off = (%d - %d%s) / (2 pi) = %d mm; "
                        .formatted(
                                mesh.mm(), girth.mm(), seam.isPositive() ? " - seam " + seam.mm() : "", standOff.mm())
                + "pins = one per started %d mm, at least %d: %d"
                        .formatted(
                                values.fasteners().spacing().mm(),
                                values.fasteners().minimum().count(),
                                fasteners.count());
    }

    private static List<String> cautions(Length girth, Length standOff, CutLengths values) {
        List<String> cautions = new ArrayList<>();
        if (girth.compareTo(values.girth().minimum()) < 0) {
            cautions.add("This trunk is below the smallest that is banded, %s of girth. Band it only with a reason."
                    .formatted(values.girth().minimum()));
        }
        if (standOff.compareTo(values.mesh().leastStandOff()) < 0) {
            cautions.add("The guard would stand off %d mm; at least %d mm is asked for. Cut the mesh longer."
                    .formatted(standOff.mm(), values.mesh().leastStandOff().mm()));
        }
        cautions.addAll(ALWAYS);
        return cautions;
    }
}
