package org.bandtrail.siteinstalls.girths;

import java.math.BigDecimal;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;

/**
 * A girth as it was written, so that a doubt can quote it and a later reader sees what the person saw.
 *
 * <p>girth = pi x diameter, rounded to the nearest millimetre, half up. Diameters are read to the micrometre first, so
 * that 6 in give 479 mm. Range: 1 mm to 100 m of girth.
 *
 * @param text number with its unit, such as {@code 39 cm} or {@code 4 ft 1 in}
 * @param basis what the number measures
 */
public record WrittenGirth(String text, GirthBasis basis) {
    private static final long LARGEST_MM = 100_000;

    /**
     * Refuses what is no girth at all.
     *
     * @throws IllegalArgumentException naming the text, if it cannot be read, is zero or goes beyond 100 m
     */
    public WrittenGirth {
        text = text.strip();
        if (!isTrunk(text, basis)) {
            throw new IllegalArgumentException(
                    "%s [%s] is no size of a trunk: it gives a girth of %d mm. Check the number and the unit."
                            .formatted(basis == GirthBasis.GIRTH ? "Girth" : "Diameter", text, girthMm(text, basis)));
        }
    }

    /** A measurement round the trunk. */
    public static WrittenGirth ofGirth(String text) {
        return new WrittenGirth(text, GirthBasis.GIRTH);
    }

    /** A measurement across the trunk. */
    public static WrittenGirth ofDiameter(String text) {
        return new WrittenGirth(text, GirthBasis.DIAMETER);
    }

    /** The girth in whole millimetres. */
    public Length girth() {
        return Length.ofMm(girthMm(text, basis));
    }

    /** Tells whether the readable text is the size of a trunk, 1 mm to 100 m of girth. */
    static boolean isTrunk(String text, GirthBasis basis) {
        long mm = girthMm(text, basis);
        return mm >= 1 && mm <= LARGEST_MM;
    }

    private static long girthMm(String text, GirthBasis basis) {
        BigDecimal mm = BigDecimal.valueOf(LengthText.micrometres(text, null), 3);
        return Math.round(basis == GirthBasis.GIRTH ? mm.doubleValue() : mm.doubleValue() * Math.PI);
    }
}
