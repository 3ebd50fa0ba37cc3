package org.bandtrail.siteinstalls.cuttingstock;

import java.util.List;

/**
 * Which piece comes off which reel, and how good that is.
 *
 * @param reels the reels that are cut, in the order of the stock
 * @param uncut pieces the stock does not suffice for, in the order of the job; each would fit on some reel
 * @param tooLong pieces longer than any reel of the stock, in the order of the job
 * @param toBuy what is missing for {@code uncut} and {@code tooLong}
 * @param newReels how many new reels are opened
 * @param weighedScrapMm scrap, and for each new reel opened what leaving it closed is worth, in mm
 * @param bound what no plan can do better than
 * @param proven true when no plan cuts more pieces, and none that cuts as many makes less scrap
 * @param fewestNewReels true when it is proven, too, that no such plan opens fewer new reels
 * @param cutOff true when patience ended before the search did; the same job may then get another plan next time
 */
public record CuttingPlan(
        List<ReelCuts> reels,
        List<Piece> uncut,
        List<Piece> tooLong,
        Purchase toBuy,
        int newReels,
        long weighedScrapMm,
        CuttingBound bound,
        boolean proven,
        boolean fewestNewReels,
        boolean cutOff) {

    /** Keeps its own copies of the lists. */
    public CuttingPlan {
        reels = List.copyOf(reels);
        uncut = List.copyOf(uncut);
        tooLong = List.copyOf(tooLong);
    }

    /** All pieces cut, in mm. */
    public long piecesMm() {
        return reels.stream().mapToLong(ReelCuts::piecesMm).sum();
    }

    /** Rests too short to be of use, in mm. */
    public long scrapMm() {
        return reels.stream().mapToLong(ReelCuts::scrapMm).sum();
    }

    /** What the cuts take, in mm. */
    public long bladeMm() {
        return reels.stream().mapToLong(ReelCuts::bladeMm).sum();
    }

    /** Usable rests that go back to stock, in mm. */
    public long leftoverMm() {
        return reels.stream().mapToLong(ReelCuts::leftoverMm).sum();
    }

    /** Scrap and blade together, in mm: the material the plan loses. */
    public long lossMm() {
        return scrapMm() + bladeMm();
    }

    /** How much more scrap than the bound the plan makes, in mm; 0 when it is proven. */
    public long gapMm() {
        return proven ? 0 : Math.max(0, weighedScrapMm - bound.weighedScrapMm());
    }
}
