package org.bandtrail.inspections.duebands;

import java.time.LocalDate;

/**
 * The numbers of a visit programme, in force from a date until the next version's date. All days are whole days of 24
 * hours.
 *
 * @param version 1, 2, 3 ...
 * @param validFrom first day it is in force, UTC
 * @param intervalDays longest time between two readings of a band, 1 to 14
 * @param loadFromPercent saturation from which the next look comes sooner, 1 to 100
 * @param loadIntervalDays days to the next look at such a band, 0 to {@code intervalDays}
 * @param fullFromPercent saturation from which a catch is only a lower bound, 1 to 100
 * @param guardIntervalDays days until a failed guard must be seen to, 0 to {@code intervalDays}
 * @param retryIntervalDays days until a band that was not read or not found is tried again, 0 to {@code intervalDays}
 * @param maxDaysUp days after the fitting by which a band must come off, because a band left on rots the bark, 1 to 366
 * @param lateAfterHours hours after which a record counts as late, 1 to 744
 * @param source where the numbers come from
 * @param reason why this version was adopted
 */
public record VisitPolicy(
        int version,
        LocalDate validFrom,
        int intervalDays,
        int loadFromPercent,
        int loadIntervalDays,
        int fullFromPercent,
        int guardIntervalDays,
        int retryIntervalDays,
        int maxDaysUp,
        int lateAfterHours,
        String source,
        String reason) {
    /** Two weeks is the longest interval of any programme seen; wildlife-oriented advice is daily. */
    private static final int LONGEST_INTERVAL_DAYS = 14;

    public VisitPolicy {
        between("intervalDays", intervalDays, 1, LONGEST_INTERVAL_DAYS);
        between("loadFromPercent", loadFromPercent, 1, 100);
        between("loadIntervalDays", loadIntervalDays, 0, intervalDays);
        between("fullFromPercent", fullFromPercent, 1, 100);
        between("guardIntervalDays", guardIntervalDays, 0, intervalDays);
        between("retryIntervalDays", retryIntervalDays, 0, intervalDays);
        between("maxDaysUp", maxDaysUp, 1, 366);
        between("lateAfterHours", lateAfterHours, 1, 744);
        if (source.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("A policy needs a source and a reason, so that others can judge it.");
        }
    }

    private static void between(String what, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException("%s [%d] is not between %d and %d.".formatted(what, value, low, high));
        }
    }
}
