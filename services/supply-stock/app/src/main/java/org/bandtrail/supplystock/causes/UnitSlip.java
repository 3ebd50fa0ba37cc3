package org.bandtrail.supplystock.causes;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Units that are taken for each other, by the factor between them. Exact by definition of the inch (25.4 mm) except the
 * circle's, which is pi to nine decimals; which slips happen is common practice, no source.
 */
enum UnitSlip {
    /** Feet written as inches. */
    FEET_INCHES("12", "feet and inches"),
    /** Inches written as centimetres. */
    INCHES_CENTIMETRES("2.54", "inches and centimetres"),
    /** A diameter written as a girth. */
    DIAMETER_GIRTH("3.141592654", "diameter and girth"),
    /** Centimetres written as millimetres. */
    CENTIMETRES_MILLIMETRES("10", "centimetres and millimetres"),
    /** Metres written as millimetres. */
    METRES_MILLIMETRES("1000", "metres and millimetres"),
    /** Inches written as millimetres. */
    INCHES_MILLIMETRES("25.4", "inches and millimetres");

    private final BigDecimal factor;
    private final String words;

    UnitSlip(String factor, String words) {
        this.factor = new BigDecimal(factor);
        this.words = words;
    }

    /** The two units. */
    String words() {
        return words;
    }

    /** The factor as people write it: 12, 2.54, 3.14. */
    String times() {
        return factor.setScale(Math.min(2, factor.scale()), RoundingMode.HALF_UP)
                .toPlainString();
    }

    /**
     * How far the true figure is from the written one times or divided by the factor.
     *
     * @return the distance, or -1 if it is more than rounding and measuring explain
     */
    long distance(long written, long truth, CausePolicy policy) {
        BigDecimal wrote = BigDecimal.valueOf(written);
        long more = rounded(wrote.multiply(factor));
        long less = rounded(wrote.divide(factor, 3, RoundingMode.HALF_UP));
        long halfUnit = rounded(factor.divide(BigDecimal.valueOf(2), 3, RoundingMode.HALF_UP));
        if (truth > written) {
            long away = Math.abs(truth - more);
            return away <= halfUnit + 1 || policy.near(truth, more) ? away : -1;
        }
        return less > 0 && policy.near(truth, less) ? Math.abs(truth - less) : -1;
    }

    private static long rounded(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }
}
