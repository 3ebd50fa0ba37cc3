package org.bandtrail.supplystock.reorderpoints;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.reordering.DailyUse;
import org.bandtrail.supplystock.reordering.LeadTimeDemand;
import org.bandtrail.supplystock.reordering.RunsOut;
import org.jspecify.annotations.Nullable;

/**
 * When to order one item for one depot, with everything that went into it; one flat object in JSON. Quantities are in
 * {@code unit}: mm or pieces. What cannot be stated is null, and {@code note} says why.
 *
 * @param onHand in the depot now; what is with crews is not counted
 * @param onOrder ordered for this depot and not yet received
 * @param note why something is missing, or null
 */
record ReorderRow(
        String materialCode,
        MaterialKind kind,
        String depotId,
        long onHand,
        long onOrder,
        String unit,
        @JsonUnwrapped Observed observed,
        @JsonUnwrapped Supplied supplied,
        @JsonUnwrapped Planned planned,
        @JsonUnwrapped Stated stated,
        @JsonUnwrapped Ends ends,
        @Nullable String note) {

    /**
     * What was used.
     *
     * @param observedFrom first day looked at, null if the item was never handed out here
     * @param daysObserved calendar days, with and without use
     * @param meanPerDay null if too few days were observed
     */
    record Observed(
            @Nullable LocalDate observedFrom,
            @Nullable LocalDate observedTo,
            int daysObserved,
            @Nullable Double meanPerDay,
            @Nullable Double sdPerDay) {
        static Observed of(DailyUse use, @Nullable LocalDate from, LocalDate to) {
            LocalDate until = from == null ? null : to;
            return switch (use) {
                case DailyUse.TooFewDays few -> new Observed(from, until, few.daysObserved(), null, null);
                case DailyUse.Measured seen ->
                    new Observed(
                            from,
                            until,
                            seen.daysObserved(),
                            seen.perDay().mean(),
                            seen.perDay().sd());
            };
        }
    }

    /** How the item is supplied; all null if it is not registered. */
    record Supplied(
            @Nullable Integer leadTimeDays,
            @Nullable Integer leadTimeSdDays,
            @Nullable Integer serviceLevelPermille) {
        static Supplied of(@Nullable ItemRow item) {
            return item == null
                    ? new Supplied(null, null, null)
                    : new Supplied(item.leadTimeDays(), item.leadTimeSdDays(), item.serviceLevelPermille());
        }
    }

    /**
     * What work plans need.
     *
     * @param plannedUntil last day that counts: today plus the lead time
     * @param planned what plans that begin by then need
     * @param plannedAbove by how much that raises the reorder point
     * @param plans their names, by day
     */
    record Planned(LocalDate plannedUntil, long planned, long plannedAbove, List<String> plans) {
        static Planned of(PlannedUse use, @Nullable Reckoning point) {
            return new Planned(use.until(), use.quantity(), point == null ? 0 : point.above(), use.plans());
        }
    }

    /**
     * The reorder point.
     *
     * @param z standard normal quantile of the service level; null where the demand is counted in pieces
     * @param safetyStock rounded up
     * @param reorderPoint rounded up
     * @param reorderNow whether what is on hand and on order together has fallen to the reorder point
     * @param formula with its numbers
     * @param source where the formula is published
     */
    record Stated(
            @Nullable Double z,
            @Nullable Double meanOfLeadTime,
            @Nullable Double sdOfLeadTime,
            @Nullable Long safetyStock,
            @Nullable Long reorderPoint,
            boolean reorderNow,
            @Nullable String formula,
            @Nullable String source) {
        static Stated of(@Nullable Reckoning point, long onHandAndOrder) {
            if (point == null) {
                return new Stated(null, null, null, null, null, false, null, null);
            }
            LeadTimeDemand demand = point.demand();
            // What is known to be needed suffices when it is just there; a forecast is a chance and wants an order by
            // then.
            boolean now =
                    demand == null ? onHandAndOrder < point.reorderPoint() : onHandAndOrder <= point.reorderPoint();
            return new Stated(
                    point.z(),
                    demand == null ? null : demand.mean(),
                    demand == null ? null : demand.sd(),
                    point.safetyStock(),
                    point.reorderPoint(),
                    now,
                    point.formula(),
                    point.source());
        }
    }

    /**
     * When the stock ends if use goes on as observed.
     *
     * @param runsOutOn first day the stock does not cover; null if nothing is used or it is more than ten years away
     * @param runsOutLatest null too if the use is too uncertain to promise an end
     */
    record Ends(
            @Nullable LocalDate runsOutOn,
            @Nullable LocalDate runsOutEarliest,
            @Nullable LocalDate runsOutLatest) {
        static Ends of(@Nullable RunsOut end) {
            return end == null ? new Ends(null, null, null) : new Ends(end.expected(), end.earliest(), end.latest());
        }
    }
}
