package org.bandtrail.inspections.contract.v1;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of a band were renewed on a visit. The moves say where everything went: old pieces from the tree to a waste
 * bag (mesh and fasteners also back to the person), new ones from the person to the tree. When the band was not known
 * yet, or a late fact changes what must have hung there, the moves that were missing follow in a further message of the
 * same visit with {@code settlesEarlier} true and no new piece.
 *
 * @param visitId the visit
 * @param bandId the band
 * @param treeId the tree, null while inspections has not heard where the band hangs (then there are no moves yet)
 * @param siteId the site, null likewise
 * @param crewId the crew, null if not written down
 * @param personId who did it, whose custody the new pieces left
 * @param newTapeReelId reel of the new tape, null if the tape stayed
 * @param newTapeLengthMm length of the new tape in millimetres, 0 if it stayed
 * @param newMeshReelId reel of the new mesh, null if the mesh stayed
 * @param newMeshLengthMm length of the new mesh in millimetres, 0 if it stayed
 * @param fastenerBatchId batch of the new fasteners, null if they stayed
 * @param fastenerPieces new fasteners in pieces, 0 if they stayed
 * @param bagId the waste bag of the old pieces, null if nothing went into a bag
 * @param settlesEarlier true if this message only carries moves an earlier message of the visit could not know
 * @param moves every quantity that changed place
 * @param happenedAt when it was done
 * @param recordedAt when inspections learnt of it
 * @param by who told it
 */
public record PiecesReplaced(
        String visitId,
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        @Nullable String crewId,
        String personId,
        @Nullable String newTapeReelId,
        long newTapeLengthMm,
        @Nullable String newMeshReelId,
        long newMeshLengthMm,
        @Nullable String fastenerBatchId,
        long fastenerPieces,
        @Nullable String bagId,
        boolean settlesEarlier,
        List<MaterialMove> moves,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The name in the envelope. */
    public static final String TYPE = "inspections.pieces-replaced.v1";

    public PiecesReplaced {
        moves = List.copyOf(moves);
    }

    /** What the event is about: the band. Order is kept per subject. */
    public String subject() {
        return "band/" + bandId;
    }
}
