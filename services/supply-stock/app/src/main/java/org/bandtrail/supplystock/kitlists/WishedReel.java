package org.bandtrail.supplystock.kitlists;

import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/**
 * From which reel pieces of a tree ought to be cut, as a cut plan says. It is followed for a tree if all its wishes of a
 * kind can be, and is no claim: a reel somebody else has keeps its promise to them.
 *
 * @param kind tape or mesh
 * @param pieces how many of the tree's pieces, null for all of them
 */
public record WishedReel(
        TreeId treeId,
        MaterialKind kind,
        ReelId reelId,
        @Nullable Integer pieces) {
    private static final int MOST_PIECES = 9;

    /**
     * Refuses what comes from no reel and counts out of range.
     *
     * @throws IllegalArgumentException naming the tree
     */
    public WishedReel {
        if (!kind.onReels()) {
            throw new IllegalArgumentException(
                    "A reel is wished for %s of tree [%s]. Wish one for tape or mesh.".formatted(kind, treeId));
        }
        if (pieces != null && (pieces < 1 || pieces > MOST_PIECES)) {
            throw new IllegalArgumentException("[%d] pieces of tree [%s] are wished from reel [%s]. Use 1 to %d."
                    .formatted(pieces, treeId, reelId, MOST_PIECES));
        }
    }

    /** How many pieces it is for, of a tree that takes so many. */
    int of(int all) {
        return pieces == null ? all : pieces;
    }
}
