package org.bandtrail.siteinstalls.bands;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.devices.DevicePart;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.policies.CutLengths;

/** Compares the reels of a fitting with what supply-stock told about them. */
final class ReelCheck {
    private final Fitting fitting;
    private final Books books;
    private final CutLengths policy;
    private final MaterialKind around;
    private final List<Finding> findings = new ArrayList<>();

    private ReelCheck(Fitting fitting, Books books) {
        this.fitting = fitting;
        this.books = books;
        this.policy = books.policy().values();
        this.around = books.device() == null
                ? MaterialKind.TAPE
                : books.device()
                        .part(DevicePart.Role.AROUND)
                        .map(DevicePart::material)
                        .orElse(MaterialKind.TAPE);
    }

    static List<Finding> findings(Fitting fitting, Books books) {
        ReelCheck check = new ReelCheck(fitting, books);
        check.tape();
        if (fitting.mesh() != null) {
            check.mesh(fitting.mesh());
        }
        return check.findings;
    }

    private void tape() {
        KnownReel reel = books.tapeReel();
        Piece tape = fitting.tape();
        if (reel == null) {
            add(
                    BandFlag.TAPE_REEL_UNKNOWN,
                    tape,
                    "No reel %s is known here. Check what is written on it.".formatted(tape.reelId()));
        } else if (reel.kind() != around) {
            add(
                    BandFlag.TAPE_REEL_WRONG_KIND,
                    tape,
                    "Reel %s holds %s, no %s. Perhaps tape and mesh are swapped."
                            .formatted(tape.reelId(), words(reel.kind()), words(around)));
        } else if (around == MaterialKind.TAPE
                && reel.width().compareTo(policy.tape().widest()) > 0) {
            add(
                    BandFlag.TAPE_TOO_WIDE,
                    tape,
                    "Tape of reel %s is %d mm wide; up to %d mm is the advice for wildlife."
                            .formatted(
                                    tape.reelId(),
                                    reel.width().mm(),
                                    policy.tape().widest().mm()));
        }
    }

    private void mesh(Piece mesh) {
        KnownReel reel = books.meshReel();
        if (reel == null) {
            add(
                    BandFlag.MESH_REEL_UNKNOWN,
                    mesh,
                    "No reel %s is known here. Check what is written on it.".formatted(mesh.reelId()));
        } else if (reel.kind() != MaterialKind.MESH) {
            add(
                    BandFlag.MESH_REEL_WRONG_KIND,
                    mesh,
                    "Reel %s holds %s, no mesh. Perhaps tape and mesh are swapped."
                            .formatted(mesh.reelId(), words(reel.kind())));
        }
    }

    private static String words(MaterialKind kind) {
        return switch (kind) {
            case TAPE -> "tape";
            case MESH -> "mesh";
            case FASTENER -> "fasteners";
        };
    }

    private void add(BandFlag flag, Piece piece, String message) {
        findings.add(Finding.of(flag, piece.reelId(), message));
    }
}
