package org.bandtrail.siteinstalls.duplicates;

/**
 * When two trees of the register look like one. The defaults are data with a source, beside the code.
 *
 * @param nearMm two places at most so far apart may be one tree, millimetres, 1 to 100,000
 * @param girthPermille girths agree if they differ by at most so much of the larger one, 0 to 1000
 * @param mostWithOneTag a tag on more trees of a site than this tells nothing and is not looked at, 2 to 100
 * @param mostAtOnePlace a place given to more trees than this is not theirs and is not looked at, 2 to 100
 * @param source where the figures come from
 * @param reason why they are as they are
 */
record DuplicateRules(
        long nearMm, int girthPermille, int mostWithOneTag, int mostAtOnePlace, String source, String reason) {
    private static final long FARTHEST_MM = 100_000;
    private static final int WHOLE = 1_000;
    private static final int MOST = 100;

    /**
     * Refuses figures that cannot be meant.
     *
     * @throws IllegalArgumentException naming the figure
     */
    DuplicateRules {
        check("nearMm", nearMm, 1, FARTHEST_MM);
        check("girthPermille", girthPermille, 0, WHOLE);
        check("mostWithOneTag", mostWithOneTag, 2, MOST);
        check("mostAtOnePlace", mostAtOnePlace, 2, MOST);
    }

    private static void check(String name, long value, long least, long most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "The rule %s [%d] must be from %d to %d.".formatted(name, value, least, most));
        }
    }
}
