package org.bandtrail.frontdesk.cutplans;

import org.bandtrail.frontdesk.neighbours.field.Cuts;

/** Finds the piece of a band in a plan, for the table in the order of the walk. */
public final class Walk {
    private Walk() {}

    /**
     * The piece of a material for a band.
     *
     * @throws IllegalStateException if the plan has none, which no kept plan does
     */
    public static Cuts.Piece piece(Cuts.Material of, String treeId, int position) {
        return of.pieces()
                .filter(piece -> piece.treeId().equals(treeId) && piece.position() == position)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "There is no piece of %s for band %d of %s.".formatted(of.material(), position, treeId)));
    }
}
