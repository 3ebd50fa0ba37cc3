package org.bandtrail.supplystock.reordering;

/**
 * What is kept beyond the expected demand of the lead time: SS = z &sigma;<sub>D</sub>.
 *
 * <p>z is the standard normal quantile of the cycle service level, &sigma;<sub>D</sub> the standard deviation of the
 * demand of the lead time, in mm or pieces. Source: Silver, Pyke and Thomas 2017, chapter 6; S. Nahmias, Production and
 * Operations Analysis, section 5.4 (both from memory; worked examples beside the tests). Valid if D is nearly normal:
 * many small uses, coefficient of variation at most about one half; for few pieces see {@link CountedDemand}.
 *
 * @param exact mm or pieces, not rounded, so that it can be added before rounding
 */
public record SafetyStock(double exact) {

    /** The stock for a cycle service level. */
    public static SafetyStock of(LeadTimeDemand demand, CycleServiceLevel level) {
        return withZ(demand, level.z());
    }

    /**
     * The stock for a given z, for comparison with tables.
     *
     * @param z standard deviations above the mean, -10 to 10
     */
    public static SafetyStock withZ(LeadTimeDemand demand, double z) {
        return new SafetyStock(InRange.checked("z", z, -10, 10) * demand.sd());
    }

    /** Rounded up to whole mm or pieces. */
    public long rounded() {
        return WholeUnits.roundedUp(exact);
    }
}
