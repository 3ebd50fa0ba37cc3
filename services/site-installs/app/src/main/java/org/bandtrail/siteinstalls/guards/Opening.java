package org.bandtrail.siteinstalls.guards;

/**
 * An opening that lets some animal through.
 *
 * @param animal who gets through, as a word of a sentence, for example a wren
 * @param overMm openings wider than this let it through, millimetres, 1 to 200
 * @param source where that comes from
 */
public record Opening(String animal, int overMm, String source) {
    private static final int MOST_MM = 200;

    /**
     * Refuses what cannot be meant.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Opening {
        if (animal.isBlank() || overMm < 1 || overMm > MOST_MM) {
            throw new IllegalArgumentException(
                    "An opening over [%d] mm for [%s] cannot be meant.".formatted(overMm, animal));
        }
    }
}
