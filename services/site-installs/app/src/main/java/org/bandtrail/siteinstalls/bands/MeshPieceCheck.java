package org.bandtrail.siteinstalls.bands;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceId;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceView;
import org.bandtrail.siteinstalls.meshpieces.Wear;

/** Compares a guard of reused mesh with what is known of the piece. */
final class MeshPieceCheck {
    private MeshPieceCheck() {}

    static List<Finding> findings(Fitting fitting, Books books) {
        MeshPieceId pieceId = fitting.meshPiece();
        Piece mesh = fitting.mesh();
        if (pieceId == null || mesh == null) {
            return List.of();
        }
        MeshPieceView known = books.meshPiece();
        if (known == null) {
            return List.of(Finding.of(
                    BandFlag.MESH_PIECE_UNKNOWN,
                    pieceId,
                    "No piece of mesh %s is known here. Check its tag.".formatted(pieceId)));
        }
        List<Finding> findings = new ArrayList<>();
        if (known.bandId() != null && !known.bandId().equals(fitting.bandId().value())) {
            findings.add(Finding.of(
                    BandFlag.MESH_PIECE_IN_USE,
                    pieceId,
                    "Piece %s hangs on band %s, as far as anybody told. Check its tag."
                            .formatted(pieceId, known.bandId())));
        }
        if (Wear.SCRAP.word().equals(known.wear())) {
            findings.add(Finding.of(
                    BandFlag.MESH_PIECE_SCRAP,
                    pieceId,
                    "Piece %s was found to be scrap. A guard with holes lets animals in.".formatted(pieceId)));
        }
        if (!known.reelId().equals(mesh.reelId().value())
                || known.lengthMm() < mesh.length().mm()) {
            findings.add(Finding.of(
                    BandFlag.MESH_PIECE_DIFFERS,
                    pieceId,
                    "Piece %s is known as %d mm of reel %s, not %d mm of reel %s."
                            .formatted(
                                    pieceId,
                                    known.lengthMm(),
                                    known.reelId(),
                                    mesh.length().mm(),
                                    mesh.reelId())));
        }
        return List.copyOf(findings);
    }
}
