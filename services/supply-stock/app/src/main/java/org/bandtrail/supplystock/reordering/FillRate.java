package org.bandtrail.supplystock.reordering;

/**
 * The share of the demand served from the shelf at once (type 2 service), in both directions.
 *
 * <pre>
 * beta = 1 - n(R) / Q,   n(R) = sigma_D G((R - E[D]) / sigma_D)
 * </pre>
 *
 * Q is the quantity of one order, R the reorder point, n the expected shortage of one order cycle, G the
 * {@link UnitNormalLoss}; all in mm or pieces. Source: S. Nahmias, Production and Operations Analysis, section 5.5
 * (from memory; his worked example beside the tests). Valid if D is nearly normal and the shortage of a cycle is less
 * than the order, n(R) &lt; Q: shortages are then filled by the next order and not counted twice.
 */
public final class FillRate {
    private static final double MOST = 1e18;

    private FillRate() {}

    /**
     * The fill rate a reorder point gives.
     *
     * @param demand of the lead time
     * @param orderQuantity Q, above 0
     * @param reorderPoint R
     * @return 0 to 1
     * @throws IllegalArgumentException if a cycle would be short of a whole order or more
     */
    public static double ofReorderPoint(LeadTimeDemand demand, double orderQuantity, double reorderPoint) {
        InRange.checked("Order quantity", orderQuantity, Double.MIN_NORMAL, MOST);
        InRange.checked("Reorder point", reorderPoint, -MOST, MOST);
        double shortage = InRange.checked(
                "Expected shortage of a cycle", expectedShortage(demand, reorderPoint), 0, orderQuantity);
        return 1 - shortage / orderQuantity;
    }

    /**
     * The reorder point that gives a fill rate.
     *
     * @param demand of the lead time
     * @param orderQuantity Q, above 0
     * @param fillRate beta, 0.01 to 0.999999
     * @return R, not rounded
     */
    public static double reorderPointFor(LeadTimeDemand demand, double orderQuantity, double fillRate) {
        InRange.checked("Order quantity", orderQuantity, Double.MIN_NORMAL, MOST);
        InRange.checked("Fill rate", fillRate, 0.01, 0.999_999);
        double shortage = (1 - fillRate) * orderQuantity;
        if (demand.sd() == 0) {
            return demand.mean() - shortage;
        }
        return demand.mean() + UnitNormalLoss.inverse(shortage / demand.sd()) * demand.sd();
    }

    /** n(R): what a cycle is short of on average. Without variability it is simply what R is too low. */
    private static double expectedShortage(LeadTimeDemand demand, double reorderPoint) {
        double sd = demand.sd();
        if (sd == 0) {
            return Math.max(0, demand.mean() - reorderPoint);
        }
        double k = (reorderPoint - demand.mean()) / sd;
        return k > 37 ? 0 : sd * UnitNormalLoss.of(k);
    }
}
