package org.bandtrail.siteinstalls.bands;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.cutting.GuardStandOff;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DevicePart;
import org.bandtrail.siteinstalls.devices.NeededPiece;
import org.bandtrail.siteinstalls.devices.PieceList;
import org.bandtrail.siteinstalls.policies.CutLengths;
import org.bandtrail.siteinstalls.proposals.Proposal;
import org.jspecify.annotations.Nullable;

/** Compares the pieces of a fitting with what the trunk takes by the policy. */
final class CutCheck {
    private final Fitting fitting;
    private final CutLengths policy;
    private final Length girth;
    private final @Nullable DeviceKind device;
    private final Length tapeProposed;
    private final Length meshProposed;
    private final List<Finding> findings = new ArrayList<>();

    private CutCheck(Fitting fitting, Books books, Length girth) {
        this.fitting = fitting;
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
        boolean openMeant = device != null && device.openBelow();
        if (policy.setup().closedBelow() && !openMeant && Boolean.FALSE.equals(fitting.details().guardClosedBelow())) {
            add(BandFlag.GUARD_OPEN_BELOW, "open", "The guard is open below. Bend its edge in to the bark.");
        }
        Length seam = Objects.requireNonNullElse(
                fitting.details().seam(), policy.setup().seam());
        Length standOff = GuardStandOff.of(mesh.length(), seam, girth);
        if (standOff.compareTo(policy.mesh().leastStandOff()) < 0) {
            add(
                    BandFlag.GUARD_TOO_CLOSE,
                    mesh.length(),
                    "A guard of %s stands %d mm off a girth of %s; at least %d mm is asked for, so %s was proposed."
                            .formatted(
                                    mesh.length(),
                                    standOff.mm(),
                                    girth,
                                    policy.mesh().leastStandOff().mm(),
                                    meshProposed));
        } else if (farAbove(mesh.length(), meshProposed)) {
            add(
                    BandFlag.MESH_UNLIKELY,
                    mesh.length(),
                    "%s of mesh for a girth of %s; %s was proposed. Check the unit."
                            .formatted(mesh.length(), girth, meshProposed));
        }
    }

    private boolean farAbove(Length length, Length proposed) {
        return length.mm() * 1000 > proposed.mm() * (1000 + policy.girth().changePermille());
    }

    private void add(BandFlag flag, Object value, String message) {
        findings.add(Finding.of(flag, value, message));
    }
}
