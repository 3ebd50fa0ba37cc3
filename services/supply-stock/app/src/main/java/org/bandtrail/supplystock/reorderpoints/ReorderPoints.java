package org.bandtrail.supplystock.reorderpoints;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.needs.PlannedNeed;
import org.bandtrail.supplystock.needs.PlannedNeeds;
import org.bandtrail.supplystock.purchases.OnOrder;
import org.bandtrail.supplystock.reordering.CycleServiceLevel;
import org.bandtrail.supplystock.reordering.DailyUse;
import org.bandtrail.supplystock.reordering.LeadTime;
import org.bandtrail.supplystock.reordering.RunsOut;
import org.bandtrail.supplystock.reorderpoints.ReorderRow.Ends;
import org.bandtrail.supplystock.reorderpoints.ReorderRow.Observed;
import org.bandtrail.supplystock.reorderpoints.ReorderRow.Planned;
import org.bandtrail.supplystock.reorderpoints.ReorderRow.Stated;
import org.bandtrail.supplystock.reorderpoints.ReorderRow.Supplied;
import org.bandtrail.supplystock.reorderpoints.UseRecords.ItemAtDepot;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Brings recorded use, supply figures and formulas together, row by row. */
@Component
class ReorderPoints {
    /** Chance that the stock ends inside the shown interval: one in ten each to be earlier or later. Our choice. */
    private static final int INTERVAL_PERMILLE = 800;

    private final UseRecords records;
    private final Items items;
    private final OnOrder onOrder;
    private final PlannedNeeds needs;
    private final int windowDays;

    /**
     * @param windowDays how many days back use is looked at; a season's start should not weigh on its end
     */
    ReorderPoints(
            UseRecords records,
            Items items,
            OnOrder onOrder,
            PlannedNeeds needs,
            @Value("${bandtrail.reorder.window-days:90}") int windowDays) {
        this.records = records;
        this.items = items;
        this.onOrder = onOrder;
        this.needs = needs;
        this.windowDays = windowDays;
    }

    /**
     * One page of rows, ordered by material and depot.
     *
     * @param after key of the last row of the page before, empty for the first page
     * @param today the first day whose use is still to come
     */
    Page page(String after, int limit, LocalDate today) {
        List<ItemAtDepot> found = records.page(after, limit + 1);
        List<ItemAtDepot> shown = found.size() > limit ? found.subList(0, limit) : found;
        LocalDate last =
                records.lastDayOfUse().filter(day -> day.isBefore(today)).orElse(today.minusDays(1));
        LocalDate first = last.minusDays(windowDays - 1L);
        Map<String, Map<LocalDate, Long>> uses = records.useByDay(first, last);
        Map<String, ItemRow> known =
                items.all().stream().collect(Collectors.toMap(ItemRow::materialCode, Function.identity()));
        Map<OnOrder.At, OnOrder.ToCome> toCome = onOrder.toCome();
        Map<String, List<PlannedNeed>> planned = PlannedUse.byKey(needs.all());
        List<ReorderRow> rows = shown.stream()
                .map(each -> {
                    LocalDate from = each.firstHandedOut() == null ? null : later(first, each.firstHandedOut());
                    DailyUse use = from == null
                            ? new DailyUse.TooFewDays(0)
                            : DailyUse.between(from, last, uses.getOrDefault(each.key(), Map.of()));
                    OnOrder.ToCome ordered = toCome.get(new OnOrder.At(each.material(), each.depotId()));
                    long coming = ordered == null ? 0 : ordered.quantity();
                    List<PlannedNeed> plans = planned.getOrDefault(each.key(), List.of());
                    return row(each, coming, use, known.get(each.material()), from, last, today, plans);
                })
                .toList();
        return new Page(rows, found.size() > limit ? shown.getLast().key() : null);
    }

    /**
     * @param next cursor of the next page, or null on the last
     */
    record Page(List<ReorderRow> rows, @Nullable String next) {}

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    /**
     * One row; pure.
     *
     * @param coming ordered for this depot and not yet received, millimetres or pieces
     * @param plans what work plans need of the item from the depot
     */
    static ReorderRow row(
            ItemAtDepot at,
            long coming,
            DailyUse use,
            @Nullable ItemRow item,
            @Nullable LocalDate from,
            LocalDate to,
            LocalDate today,
            List<PlannedNeed> plans) {
        DailyUse.Measured seen = use instanceof DailyUse.Measured enough ? enough : null;
        PlannedUse planned = PlannedUse.of(plans, today, item == null ? 0 : item.leadTimeDays());
        Reckoning point = item == null ? null : reckoned(at, seen, item, planned);
        RunsOut end = seen == null
                ? null
                : RunsOut.on(at.onHand(), seen, today, INTERVAL_PERMILLE).orElse(null);
        return new ReorderRow(
                at.material(),
                at.kind(),
                at.depotId(),
                at.onHand(),
                coming,
                at.kind().onReels() ? "mm" : "pieces",
                Observed.of(use, from, to),
                Supplied.of(item),
                Planned.of(planned, point),
                Stated.of(point, at.onHand() + coming),
                Ends.of(end),
                note(at, use, item, planned));
    }

    private static @Nullable Reckoning reckoned(
            ItemAtDepot at, DailyUse.@Nullable Measured seen, ItemRow item, PlannedUse planned) {
        if (seen != null) {
            return Reckoning.of(
                            at.kind(),
                            seen.perDay(),
                            new LeadTime(item.leadTimeDays(), item.leadTimeSdDays()),
                            new CycleServiceLevel(item.serviceLevelPermille()))
                    .raised(planned, seen.perDay());
        }
        return planned.quantity() == 0 ? null : Reckoning.ofPlansAlone(planned);
    }

    private static @Nullable String note(ItemAtDepot at, DailyUse use, @Nullable ItemRow item, PlannedUse planned) {
        if (item == null) {
            return "Item %s is not registered, so its lead time is not known. Register it.".formatted(at.material());
        }
        if (use instanceof DailyUse.TooFewDays tooFew) {
            return planned.quantity() == 0
                    ? tooFew.sentence()
                    : "Only %d days of use are recorded, too few to forecast; what plans need is reckoned alone."
                            .formatted(tooFew.daysObserved());
        }
        return null;
    }
}
