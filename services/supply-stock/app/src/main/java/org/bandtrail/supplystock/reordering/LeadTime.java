package org.bandtrail.supplystock.reordering;

/**
 * How long a supplier takes from the order to the shelf, in the same days as the use (calendar days).
 *
 * @param days E[L], mean lead time, 0 to 3,650 days
 * @param sdDays standard deviation of the lead time, 0 to 3,650 days; 0 for a supplier who always keeps the date
 */
public record LeadTime(double days, double sdDays) {
    private static final double TEN_YEARS = 3_650;

    public LeadTime {
        InRange.checked("Lead time (days)", days, 0, TEN_YEARS);
        InRange.checked("Standard deviation of the lead time (days)", sdDays, 0, TEN_YEARS);
    }

    /** A lead time that never varies. */
    public static LeadTime fixed(double days) {
        return new LeadTime(days, 0);
    }

    /** Var(L), in square days. */
    public double variance() {
        return sdDays * sdDays;
    }
}
