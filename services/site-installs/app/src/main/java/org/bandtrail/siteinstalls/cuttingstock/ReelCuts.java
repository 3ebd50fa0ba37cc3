package org.bandtrail.siteinstalls.cuttingstock;

import java.util.List;

/**
 * What comes off one reel. Always: length of the reel = pieces + leftover + scrap + blade.
 *
 * @param stockId the reel
 * @param inOrder the pieces in the order of the job, at least one
 * @param leftoverMm usable rest that goes back to stock, 0 if none
 * @param scrapMm rest too short to be of use, 0 if none
 * @param bladeMm what the cuts take together
 */
public record ReelCuts(String stockId, List<Piece> inOrder, long leftoverMm, long scrapMm, long bladeMm) {

    /** Keeps its own copy of the pieces. */
    public ReelCuts {
        inOrder = List.copyOf(inOrder);
    }

    /** The pieces together, in mm. */
    public long piecesMm() {
        return inOrder.stream().mapToLong(Piece::lengthMm).sum();
    }
}
