package org.bandtrail.supplystock.reorderpoints;

import java.util.Locale;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.reordering.CountedDemand;
import org.bandtrail.supplystock.reordering.CycleServiceLevel;
import org.bandtrail.supplystock.reordering.DemandPerDay;
import org.bandtrail.supplystock.reordering.LeadTime;
import org.bandtrail.supplystock.reordering.LeadTimeDemand;
import org.bandtrail.supplystock.reordering.ReorderPoint;
import org.jspecify.annotations.Nullable;

/**
 * A reorder point with its formula written out. What plans need beyond the forecast is added. Lengths are reckoned with the normal curve, pieces with a curve for
 * counts up to a million pieces per lead time and with the normal curve beyond.
 *
 * @param demand of the lead time, null where only plans are known
 * @param z null where the demand is counted
 * @param safetyStock rounded up, mm or pieces; null where only plans are known
 * @param above what plans need beyond the forecast, rounded up, mm or pieces
 * @param reorderPoint rounded up, mm or pieces
 * @param formula with its numbers
 * @param source where it is published
 */
record Reckoning(
        @Nullable LeadTimeDemand demand,
        @Nullable Double z,
        @Nullable Long safetyStock,
        long above,
        long reorderPoint,
        String formula,
        String source) {
    private static final String PLANS = "What work plans need, without a forecast: our own rule, no published source";
    private static final double MOST_COUNTED = 1e6;
    private static final String NORMAL =
            "E. A. Silver, D. F. Pyke, D. J. Thomas: Inventory and Production Management in Supply Chains, 4th ed. 2017, ch. 6";
    private static final String COUNTED = NORMAL
            + "; curve: N. L. Johnson, A. W. Kemp, S. Kotz: Univariate Discrete Distributions, 3rd ed. 2005, ch. 4 and 5";

    static Reckoning of(MaterialKind kind, DemandPerDay use, LeadTime lead, CycleServiceLevel level) {
        LeadTimeDemand demand = LeadTimeDemand.of(use, lead);
        return kind == MaterialKind.FASTENER && demand.mean() <= MOST_COUNTED
                ? counted(demand, use, lead, level)
                : measured(demand, use, lead, level);
    }

    /** The same, raised by what plans need beyond the forecast of the days they cover. */
    Reckoning raised(PlannedUse planned, DemandPerDay use) {
        long more = planned.demand().aboveRounded(use);
        if (more == 0) {
            return this;
        }
        String added = String.format(
                Locale.ROOT,
                "; plans need P = %d until the lead time ends, c = %d days of it are covered by them, so"
                        + " max(0, P - m c) = max(0, %d - %.1f x %d) = %d is added: %d",
                planned.quantity(),
                planned.coveredDays(),
                planned.quantity(),
                use.mean(),
                planned.coveredDays(),
                more,
                reorderPoint + more);
        return new Reckoning(demand, z, safetyStock, more, reorderPoint + more, formula + added, source);
    }

    /** Where too little was used to forecast anything, what plans need is known all the same. */
    static Reckoning ofPlansAlone(PlannedUse planned) {
        return new Reckoning(
                null,
                null,
                null,
                planned.quantity(),
                planned.quantity(),
                "R = P, what plans need until the lead time ends = %d".formatted(planned.quantity()),
                PLANS);
    }

    private static Reckoning measured(LeadTimeDemand demand, DemandPerDay use, LeadTime lead, CycleServiceLevel level) {
        ReorderPoint point = ReorderPoint.of(demand, level);
        String formula = String.format(
                Locale.ROOT,
                "R = m L + z sqrt(L s^2 + m^2 sL^2) = %.1f x %.0f + %.4f x sqrt(%.0f x %.1f^2 + %.1f^2 x %.0f^2) = %d",
                use.mean(),
                lead.days(),
                level.z(),
                lead.days(),
                use.sd(),
                use.mean(),
                lead.sdDays(),
                point.rounded());
        return new Reckoning(demand, level.z(), point.safety().rounded(), 0, point.rounded(), formula, NORMAL);
    }

    private static Reckoning counted(LeadTimeDemand demand, DemandPerDay use, LeadTime lead, CycleServiceLevel level) {
        CountedDemand pieces = CountedDemand.of(demand);
        long point = pieces.reorderPoint(level);
        String formula = String.format(
                Locale.ROOT,
                "R = smallest r with P(X <= r) >= %.3f, X %s with mean m L = %.2f x %.0f = %.1f"
                        + " and variance L s^2 + m^2 sL^2 = %.0f x %.2f^2 + %.2f^2 x %.0f^2 = %.1f: R = %d",
                level.probability(),
                pieces.distribution(),
                use.mean(),
                lead.days(),
                demand.mean(),
                lead.days(),
                use.sd(),
                use.mean(),
                lead.sdDays(),
                demand.variance(),
                point);
        long safety = Math.max(0, point - (long) Math.floor(demand.mean()));
        return new Reckoning(demand, null, safety, 0, point, formula, COUNTED);
    }
}
