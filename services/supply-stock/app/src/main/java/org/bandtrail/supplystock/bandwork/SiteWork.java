package org.bandtrail.supplystock.bandwork;

/**
 * Work at one site within a stretch of time.
 *
 * @param siteId empty where no service knows the site
 * @param trees trees with at least one band at some time within it
 * @param bands bands that hung at some time within it
 * @param bandSeconds seconds that bands hung within it, added up over the bands; 86,400 are one band-day
 * @param insects insects counted on visits within it
 * @param lowerBounds visits whose count is only a lower bound
 */
public record SiteWork(String siteId, long trees, long bands, long bandSeconds, long insects, long lowerBounds) {
    /** Seconds of a band-day. */
    public static final long DAY = 86_400;

    /** Both together; trees and bands of two sites are different ones. */
    public SiteWork plus(SiteWork other) {
        return new SiteWork(
                siteId,
                trees + other.trees,
                bands + other.bands,
                bandSeconds + other.bandSeconds,
                insects + other.insects,
                lowerBounds + other.lowerBounds);
    }

    /** A site where nothing was done. */
    public static SiteWork none(String siteId) {
        return new SiteWork(siteId, 0, 0, 0, 0, 0);
    }
}
