package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;

/**
 * The measuring tape a crew carries: lengths are proposed in steps it shows. 1 in = 25.4 mm exactly (NIST SP 811,
 * appendix B.8), so an eighth of an inch is 3.175 mm.
 */
public enum TapeMeasure {
    /** Steps of 5 mm. */
    METRIC(5_000),
    /** Steps of 1/8 in. */
    IMPERIAL(3_175);

    private final long stepMicrometres;

    TapeMeasure(long stepMicrometres) {
        this.stepMicrometres = stepMicrometres;
    }

    /**
     * The measure of a word.
     *
     * @param word metric or imperial
     * @throws IllegalArgumentException naming another word
     */
    public static TapeMeasure named(String word) {
        return switch (word) {
            case "metric" -> METRIC;
            case "imperial" -> IMPERIAL;
            default ->
                throw new IllegalArgumentException("measure [%s] is neither metric nor imperial.".formatted(word));
        };
    }

    /** The next step at or above the length, in whole millimetres; never shorter than the length. */
    public Length roundUp(Length length) {
        long steps = Math.ceilDiv(length.mm() * 1000, stepMicrometres);
        return Length.ofMm(Math.floorDiv(steps * stepMicrometres + 500, 1000));
    }
}
