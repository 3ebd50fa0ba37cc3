package org.bandtrail.siteinstalls.cuttingstock;

/**
 * What to buy so that the pieces which the stock could not serve can be cut.
 *
 * @param newReels how many reels of {@code newReelMm}; 0 if none is needed
 * @param newReelMm length of one of them in mm
 * @param longReels how many pieces are longer than any reel that is there or can be bought; each wants its own reel
 * @param longestMm the longest of them in mm, 0 if there is none: a reel must have at least this
 */
public record Purchase(int newReels, long newReelMm, int longReels, long longestMm) {

    /** True when the stock serves the whole list. */
    public boolean nothing() {
        return newReels == 0 && longReels == 0;
    }
}
