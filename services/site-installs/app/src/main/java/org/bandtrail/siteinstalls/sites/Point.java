package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A point on the earth, WGS 84, in whole ten-millionths of a degree (about a centimetre).
 *
 * @param latitudeE7 -900000000 to 900000000, north positive
 * @param longitudeE7 -1800000000 to 1800000000, east positive
 */
public record Point(int latitudeE7, int longitudeE7) {
    private static final int QUARTER = 900_000_000;

    /**
     * Refuses points off the earth.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Point {
        if (Math.abs((long) latitudeE7) > QUARTER) {
            throw new IllegalArgumentException("Latitude [%s] must be from -90 to 90. Perhaps it is the longitude?"
                    .formatted(degrees(latitudeE7)));
        }
        if (Math.abs((long) longitudeE7) > 2L * QUARTER) {
            throw new IllegalArgumentException(
                    "Longitude [%s] must be from -180 to 180.".formatted(degrees(longitudeE7)));
        }
    }

    /**
     * A point from degrees.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public static Point ofDegrees(BigDecimal latitude, BigDecimal longitude) {
        return new Point(e7("Latitude", latitude), e7("Longitude", longitude));
    }

    private static int e7(String name, BigDecimal degrees) {
        BigDecimal scaled = degrees.movePointRight(7).setScale(0, RoundingMode.HALF_UP);
        if (scaled.abs().compareTo(BigDecimal.valueOf(2L * QUARTER)) > 0) {
            throw new IllegalArgumentException("%s [%s] is beyond 180 degrees.".formatted(name, degrees));
        }
        return scaled.intValueExact();
    }

    /** Degrees with seven decimals, for example {@code 40.1234567}. */
    public static BigDecimal degrees(int e7) {
        return BigDecimal.valueOf(e7, 7);
    }
}
