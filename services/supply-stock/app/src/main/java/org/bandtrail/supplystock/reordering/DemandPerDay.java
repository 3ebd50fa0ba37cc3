package org.bandtrail.supplystock.reordering;

/**
 * What is used of one item on one day, on average and how much it varies.
 *
 * @param mean E[d], mean use per calendar day, in mm or pieces, 0 to 10^14
 * @param sd standard deviation of a day's use, same unit, 0 to 10^15
 */
public record DemandPerDay(double mean, double sd) {
    /** Ten times the longest length the kernel knows. */
    private static final double MOST = 1e14;

    /** A single day of use among days without has a standard deviation far above the mean. */
    private static final double MOST_SD = 1e15;

    public DemandPerDay {
        InRange.checked("Mean use per day", mean, 0, MOST);
        InRange.checked("Standard deviation of the use per day", sd, 0, MOST_SD);
    }

    /** Use that is the same every day. */
    public static DemandPerDay constant(double mean) {
        return new DemandPerDay(mean, 0);
    }

    /** Var(d), in square units. */
    public double variance() {
        return sd * sd;
    }
}
