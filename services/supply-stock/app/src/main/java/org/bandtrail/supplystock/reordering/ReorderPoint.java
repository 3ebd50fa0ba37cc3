package org.bandtrail.supplystock.reordering;

/**
 * The stock at which to order: R = E[D] + SS. When what is on hand and on order has fallen to R, an order placed now
 * arrives in time with the probability of the cycle service level.
 *
 * <p>E[D] is the mean demand of the lead time, SS the {@link SafetyStock}. Source and validity as there. The service
 * level is that of one order cycle, not the share of demand served ({@link FillRate}): for Nahmias' mustard jars 98
 * percent of the one needs 151 jars and of the other 126.
 *
 * @param demand of the lead time
 * @param safety added to its mean
 */
public record ReorderPoint(LeadTimeDemand demand, SafetyStock safety) {

    /** The point for a cycle service level. */
    public static ReorderPoint of(LeadTimeDemand demand, CycleServiceLevel level) {
        return new ReorderPoint(demand, SafetyStock.of(demand, level));
    }

    /** The point for a given z, for comparison with tables. */
    public static ReorderPoint withZ(LeadTimeDemand demand, double z) {
        return new ReorderPoint(demand, SafetyStock.withZ(demand, z));
    }

    /** Not rounded, mm or pieces. */
    public double exact() {
        return demand.mean() + safety.exact();
    }

    /** Rounded up, once, to whole mm or pieces; the sum of two rounded parts could be one more. */
    public long rounded() {
        return WholeUnits.roundedUp(exact());
    }
}
