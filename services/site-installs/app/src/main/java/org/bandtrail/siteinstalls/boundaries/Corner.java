package org.bandtrail.siteinstalls.boundaries;

/**
 * A corner of a boundary, WGS 84, in whole ten-millionths of a degree (about a centimetre).
 *
 * @param latitudeE7 -900000000 to 900000000, north positive
 * @param longitudeE7 -1800000000 to 1800000000, east positive
 */
public record Corner(int latitudeE7, int longitudeE7) {
    private static final double E7 = 1e7;

    /** Degrees north. */
    public double latitude() {
        return latitudeE7 / E7;
    }

    /** Degrees east. */
    public double longitude() {
        return longitudeE7 / E7;
    }
}
