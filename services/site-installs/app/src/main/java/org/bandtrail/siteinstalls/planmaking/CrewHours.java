package org.bandtrail.siteinstalls.planmaking;

/**
 * How long the work takes and how long a crew's day is: minutes = bands x minutesPerBand + trees x minutesPerTree +
 * sites x minutesPerSite. Data of {@code defaults/crew-hours.json} with its source; a guess to plan with, never a
 * measure of people.
 *
 * @param minutesPerBand cutting, fitting and guarding one band, 1 to 240
 * @param minutesPerTree walking there and scraping bark, 0 to 240
 * @param minutesPerSite getting out, unloading, getting on, 0 to 240
 * @param minutesPerDay what a crew has in a day without travel, 60 to 1440
 * @param source where the figures come from
 */
record CrewHours(int minutesPerBand, int minutesPerTree, int minutesPerSite, int minutesPerDay, String source) {

    /**
     * Refuses figures that cannot be meant.
     *
     * @throws IllegalArgumentException naming the figure
     */
    CrewHours {
        within("minutes per band", minutesPerBand, 1, 240);
        within("minutes per tree", minutesPerTree, 0, 240);
        within("minutes per site", minutesPerSite, 0, 240);
        within("minutes per day", minutesPerDay, 60, 1440);
    }

    /** What so much work takes, in minutes. */
    long minutes(long bands, long trees, long sites) {
        return bands * minutesPerBand + trees * minutesPerTree + sites * minutesPerSite;
    }

    private static void within(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "The %s [%d] must be from %d to %d.".formatted(name, value, least, most));
        }
    }
}
