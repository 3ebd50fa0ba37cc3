package org.bandtrail.siteinstalls.cuttingstock;

/**
 * What counts as lost. The blade takes its allowance at every cut: between two pieces, and behind the last piece when
 * anything is left on the reel. A last piece that ends exactly with the reel needs no cut. When less than one allowance
 * is left behind the last piece, the blade takes just that.
 *
 * @param bladeMm what one cut takes, in mm, 0 to 1,000; 0 for shears and knives
 * @param usableFromMm a rest of at least this goes back to stock, a shorter one is scrap; in mm, usually the shortest
 *     band expected; above every reel's length nothing goes back, and with equal reels the plan with least scrap is
 *     then the one with fewest reels
 * @param newReelMm length of a reel that can be bought, in mm, for saying what to buy when the stock does not suffice;
 *     0 if nothing can be bought
 * @param openingWorthMm how much scrap is accepted to leave one new reel closed, in mm; 0 puts scrap strictly first,
 *     which opens reels for a few millimetres; the shortest band is a sensible worth
 */
public record CuttingRules(long bladeMm, long usableFromMm, long newReelMm, long openingWorthMm) {

    /** Scrap strictly before the number of reels opened. */
    public CuttingRules(long bladeMm, long usableFromMm, long newReelMm) {
        this(bladeMm, usableFromMm, newReelMm, 0);
    }

    /** Refuses values out of range, each by name. */
    public CuttingRules {
        within("blade allowance", bladeMm, 1_000);
        within("usable leftover", usableFromMm, Integer.MAX_VALUE);
        within("length of a new reel", newReelMm, CuttingJob.LONGEST_MM - 1_000);
        within("worth of a closed reel", openingWorthMm, CuttingJob.LONGEST_MM);
    }

    private static void within(String what, long value, long most) {
        if (value < 0 || value > most) {
            throw new IllegalArgumentException(
                    "The %s is [%d mm], it must be 0 to %d mm.".formatted(what, value, most));
        }
    }
}
