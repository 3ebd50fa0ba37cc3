package org.bandtrail.supplystock.reordering;

/**
 * What is used of one item on one day, on average and how much it varies.
 *
 * @param mean E[d], mean use per calendar day, in mm or pieces, 0 to 10^10
 * @param sd standard deviation of a day's use, same unit, 0 to 10^10
 */
public record DemandPerDay(double mean, double sd) {
    private static final double MOST = 1e10;

    public DemandPerDay {
        InRange.checked("Mean use per day", mean, 0, MOST);
        InRange.checked("Standard deviation of the use per day", sd, 0, MOST);
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
