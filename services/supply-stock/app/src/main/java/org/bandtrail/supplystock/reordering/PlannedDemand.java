package org.bandtrail.supplystock.reordering;

/**
 * What plans need beyond what is forecast anyway.
 *
 * <pre>
 * above = max(0, P - m c)
 * </pre>
 *
 * P is what plans need until the lead time ends, c the calendar days of the lead time on which planned work goes on, m
 * the mean use of a day. On the days a plan covers, the greater of plan and forecast counts; on the other days the
 * forecast does. So the demand of the lead time becomes m (L - c) + max(P, m c) = m L + above, and the reorder point
 * rises by the same. The spread of the forecast stays as it is, although a plan is more certain than a forecast: that
 * errs on the safe side. Our own rule, no published source. Valid for P of 0 to 10^18 and c of 0 to 10^5 days.
 *
 * @param planned P, in mm or pieces
 * @param coveredDays c, in days
 */
public record PlannedDemand(double planned, double coveredDays) {
    private static final double MOST_DAYS = 1e5;

    /** Refuses what is out of range, by name. */
    public PlannedDemand {
        InRange.checked("Planned need", planned, 0, 1e18);
        InRange.checked("Days covered by plans", coveredDays, 0, MOST_DAYS);
    }

    /** By how much plans exceed the forecast, in mm or pieces, 0 or more. */
    public double above(DemandPerDay use) {
        return Math.max(0, planned - use.mean() * coveredDays);
    }

    /** The same, rounded up to whole mm or pieces. */
    public long aboveRounded(DemandPerDay use) {
        return WholeUnits.roundedUp(above(use));
    }
}
