package org.bandtrail.siteinstalls.bands;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DevicePart;
import org.bandtrail.siteinstalls.devices.NeededPiece;
import org.bandtrail.siteinstalls.devices.PieceList;
import org.bandtrail.siteinstalls.guards.GuardDoubt;
import org.bandtrail.siteinstalls.guards.GuardRule;
import org.bandtrail.siteinstalls.guards.GuardSheet;
import org.bandtrail.siteinstalls.guards.Openings;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.policies.CutLengths;
import org.bandtrail.siteinstalls.proposals.Proposal;
import org.jspecify.annotations.Nullable;

/** Compares the pieces of a fitting with what the trunk takes by the policy. */
final class CutCheck {
    private final Fitting fitting;
    private final Books books;
    private final CutLengths policy;
    private final Length girth;
    private final @Nullable DeviceKind device;
    private final Length tapeProposed;
    private final Length meshProposed;
    private final List<Finding> findings = new ArrayList<>();

    private CutCheck(Fitting fitting, Books books, Length girth) {
        this.fitting = fitting;
        this.books = books;
        this.policy = books.policy().values();
        this.girth = girth;
        this.device = books.device();
        Proposal proposal = Proposal.of(girth, books.policy(), TapeMeasure.METRIC);
        this.tapeProposed = proposed(DevicePart.Role.AROUND, proposal.tape());
        this.meshProposed = proposed(DevicePart.Role.GUARD, proposal.mesh());
    }

    /** What the device takes in this role, else what a sticky band would. */
    private Length proposed(DevicePart.Role role, Length otherwise) {
        return device == null
                ? otherwise
                : PieceList.of(device, girth, policy, TapeMeasure.METRIC)
                        .in(role)
                        .map(NeededPiece::length)
                        .orElse(otherwise);
    }

    static List<Finding> findings(Fitting fitting, Books books, Length girth) {
        CutCheck check = new CutCheck(fitting, books, girth);
        check.tape();
        check.guard();
        check.deviation();
        return check.findings;
    }

    private void tape() {
        Length length = fitting.tape().length();
        Length proposed = tapeProposed;
        if (length.compareTo(girth) < 0) {
            add(
                    BandFlag.TAPE_TOO_SHORT,
                    length,
                    "%s of tape does not reach round %s; %s was proposed.".formatted(length, girth, proposed));
        } else if (farAbove(length, proposed)) {
            add(
                    BandFlag.TAPE_UNLIKELY,
                    length,
                    "%s of tape for a girth of %s; %s was proposed. Check the unit."
                            .formatted(length, girth, proposed));
        }
    }

    private void guard() {
        Piece mesh = fitting.mesh();
        if (mesh == null) {
            if (device == null || device.needsGuard()) {
                add(BandFlag.GUARD_MISSING, "none", "No guard keeps birds and other animals off this tape.");
            }
            return;
        }
        List<GuardDoubt> doubts = GuardDoubt.about(sheet(mesh), rule(), Openings.house());
        for (GuardDoubt doubt : doubts) {
            switch (doubt.kind()) {
                case TOUCHES, TOO_CLOSE -> add(BandFlag.GUARD_TOO_CLOSE, mesh.length(), doubt.message());
                case OPENING -> add(BandFlag.GUARD_OPENING_TOO_WIDE, mesh.reelId(), doubt.message());
                case NARROW -> add(BandFlag.GUARD_TOO_NARROW, mesh.reelId(), doubt.message());
                case OPEN_BELOW -> add(BandFlag.GUARD_OPEN_BELOW, "open", doubt.message());
            }
        }
        if (farAbove(mesh.length(), meshProposed)) {
            add(
                    BandFlag.MESH_UNLIKELY,
                    mesh.length(),
                    "%s of mesh for a girth of %s; %s was proposed. Check the unit."
                            .formatted(mesh.length(), girth, meshProposed));
        }
    }

    private GuardSheet sheet(Piece mesh) {
        KnownReel reel = books.meshReel();
        KnownReel tape = books.tapeReel();
        KnownReel guard = reel != null && reel.kind() == MaterialKind.MESH ? reel : null;
        return new GuardSheet(
                mesh.length(),
                Objects.requireNonNullElse(
                        fitting.details().seam(), policy.setup().seam()),
                girth,
                guard == null ? null : guard.width(),
                tape != null && tape.kind() == MaterialKind.TAPE ? tape.width() : null,
                guard == null ? null : guard.opening(),
                fitting.details().guardClosedBelow());
    }

    private GuardRule rule() {
        boolean openMeant = device != null && device.openBelow();
        return new GuardRule(
                policy.mesh().leastStandOff(),
                policy.mesh().widestOpening(),
                policy.setup().guardWider(),
                policy.setup().closedBelow() && !openMeant);
    }

    /**
     * A piece that differs from what was proposed by more than its ends can give has a reason, and somebody knows it
     * now: tape by more than its overlap, mesh by more than half of what lets it stand off. What is asked about anyway
     * is not asked about twice.
     */
    private void deviation() {
        if (fitting.details().deviation() != null || !findings.isEmpty()) {
            return;
        }
        List<String> differing = new ArrayList<>();
        differs("tape", fitting.tape(), tapeProposed, policy.tape().overlap().mm())
                .ifPresent(differing::add);
        // A piece of reused mesh has the length it has; that is reason enough.
        if (fitting.mesh() != null && fitting.meshPiece() == null) {
            differs("mesh", fitting.mesh(), meshProposed, policy.mesh().extra().mm() / 2)
                    .ifPresent(differing::add);
        }
        if (!differing.isEmpty()) {
            add(
                    BandFlag.DEVIATION_UNEXPLAINED,
                    "no reason",
                    "%s. Say why in a few words; whoever comes next will ask."
                            .formatted(String.join(", and ", differing)));
        }
    }

    private static Optional<String> differs(String what, Piece piece, Length proposed, long slack) {
        long more = piece.length().mm() - proposed.mm();
        return Math.abs(more) <= slack
                ? Optional.empty()
                : Optional.of("%d mm of %s is %d mm %s than proposed"
                        .formatted(piece.length().mm(), what, Math.abs(more), more > 0 ? "longer" : "shorter"));
    }

    private boolean farAbove(Length length, Length proposed) {
        return length.mm() * 1000 > proposed.mm() * (1000 + policy.girth().changePermille());
    }

    private void add(BandFlag flag, Object value, String message) {
        findings.add(Finding.of(flag, value, message));
    }
}
