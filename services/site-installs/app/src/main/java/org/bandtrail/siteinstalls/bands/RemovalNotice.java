package org.bandtrail.siteinstalls.bands;

/**
 * How early somebody is told that a band must come off. The defaults are data with a source, beside the code.
 *
 * @param days before the day by which a band must be off, 0 to 120
 * @param source where the figure comes from
 */
record RemovalNotice(int days, String source) {
    private static final int MOST_DAYS = 120;

    /**
     * Refuses days that cannot be meant.
     *
     * @throws IllegalArgumentException naming the days
     */
    RemovalNotice {
        if (days < 0 || days > MOST_DAYS) {
            throw new IllegalArgumentException(
                    "The days of notice [%d] must be from 0 to %d.".formatted(days, MOST_DAYS));
        }
    }
}
