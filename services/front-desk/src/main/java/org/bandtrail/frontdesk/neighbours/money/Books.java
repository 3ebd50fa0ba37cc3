package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What supply-stock reckons from its ledger: audit, reorder points. mm, pieces, minor units of money. */
public final class Books {
    private Books() {}

    /**
     * The audit.
     *
     * @param zero whether every law holds on the stored data
     * @param findings where books and field disagree: open questions to people, not errors of the books
     * @param recount what counting every row again found, null if nobody asked for it
     */
    public record Audit(
            @Nullable Instant readAt,
            boolean zero,
            List<Law> laws,
            List<Finding> findings,
            @Nullable Recount recount) {}

    /** Every kept sum beside the sum of its rows; moves is how many rows were read. */
    public record Recount(long moves, List<Law> sums) {}

    /** One law with both its sides. */
    public record Law(String name, @Nullable String statement, long left, long right, long difference, String unit) {}

    /** Something that does not add up. */
    public record Finding(
            String what,
            String material,
            String id,
            @Nullable String place,
            @Nullable String personId,
            long quantity,
            String unit,
            @Nullable Instant since,
            @Nullable String sentence) {}

    /** When to order an item at a depot, with every input. */
    public record ReorderPoint(
            String materialCode,
            String depotId,
            long onHand,
            @Nullable Long onOrder,
            String unit,
            @Nullable Long planned,
            @Nullable LocalDate plannedUntil,
            @Nullable Long plannedAbove,
            @Nullable List<String> plans,
            @Nullable Double meanPerDay,
            @Nullable Double sdPerDay,
            @Nullable Long daysObserved,
            @Nullable Double leadTimeDays,
            @Nullable Double leadTimeSdDays,
            @Nullable Long serviceLevelPermille,
            @Nullable Double z,
            @Nullable Double safetyStock,
            @Nullable Double reorderPoint,
            boolean reorderNow,
            @Nullable LocalDate runsOutOn,
            @Nullable String formula,
            @Nullable String source,
            @Nullable String note) {

        /** Whether work plans need any of it until a delivery could be there. */
        public boolean inPlans() {
            return planned != null && planned > 0;
        }

        /** What of that goes beyond the forecast. */
        public long beyondForecast() {
            return plannedAbove == null ? 0 : plannedAbove;
        }

        /** Ordered and not yet received; 0 if nothing is. */
        public long coming() {
            return onOrder == null ? 0 : onOrder;
        }

        /** A proposal: what brings stock and orders up to the reorder point and the use of one more lead time. */
        public long proposed() {
            double upTo = number(reorderPoint) + number(meanPerDay) * number(leadTimeDays);
            return Math.max(0, (long) Math.ceil(upTo) - onHand - coming());
        }

        private static double number(@Nullable Double value) {
            return value == null ? 0 : value;
        }
    }
}
