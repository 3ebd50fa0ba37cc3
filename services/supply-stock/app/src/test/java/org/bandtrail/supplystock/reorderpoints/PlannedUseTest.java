package org.bandtrail.supplystock.reorderpoints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.needs.PlannedNeed;
import org.bandtrail.supplystock.reordering.DailyUse;
import org.bandtrail.supplystock.reordering.DemandPerDay;
import org.bandtrail.supplystock.reordering.PlannedDemand;
import org.bandtrail.supplystock.reorderpoints.UseRecords.ItemAtDepot;
import org.junit.jupiter.api.Test;

/** Plans raise the reorder point by what they need beyond the forecast of the days they cover; figures by hand. */
class PlannedUseTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 10);
    private static final ItemRow ITEM = new ItemRow(
            "TAPE-1", MaterialKind.TAPE, "Tape", 127L, null, 50_000L, null, Money.of(18_00, "USD"), 5, 0, 950);

    private static PlannedNeed need(String plan, int fromToday, int days, long quantity) {
        LocalDate day = TODAY.plusDays(fromToday);
        return new PlannedNeed(
                plan,
                new MaterialCode("TAPE-1"),
                MaterialKind.TAPE,
                new DepotId("NORTH"),
                day,
                day.plusDays(days - 1L),
                quantity,
                quantity);
    }

    private static ReorderRow row(DailyUse use, long onHand, PlannedNeed... plans) {
        ItemAtDepot shelf = new ItemAtDepot("TAPE-1", MaterialKind.TAPE, "NORTH", onHand, TODAY.minusDays(40));
        return ReorderPoints.row(shelf, 0, use, ITEM, TODAY.minusDays(40), TODAY.minusDays(1), TODAY, List.of(plans));
    }

    private static DailyUse forecast() {
        return new DailyUse.Measured(new DemandPerDay(100, 0), 40, 20);
    }

    @Test
    void only_what_begins_before_the_lead_time_ends_counts_and_days_count_once() {
        PlannedUse use = PlannedUse.of(
                List.of(need("A", 0, 2, 700), need("B", 1, 1, 200), need("C", 5, 3, 50), need("D", 6, 1, 9_999)),
                TODAY,
                5);
        assertThat(use.quantity()).isEqualTo(950);
        assertThat(use.coveredDays()).isEqualTo(2);
        assertThat(use.plans()).containsExactly("A", "B", "C");
        assertThat(use.until()).isEqualTo(TODAY.plusDays(5));
    }

    @Test
    void what_should_be_done_by_now_and_is_not_is_needed_still() {
        PlannedUse late = PlannedUse.of(List.of(need("A", -3, 2, 700)), TODAY, 5);
        assertThat(late.quantity()).isEqualTo(700);
        assertThat(late.coveredDays()).isZero();
    }

    @Test
    void on_the_days_a_plan_covers_the_greater_of_plan_and_forecast_counts() {
        ReorderRow none = row(forecast(), 1_000);
        ReorderRow more = row(forecast(), 1_000, need("A", 1, 2, 650));
        ReorderRow less = row(forecast(), 1_000, need("A", 1, 2, 150));

        assertThat(none.stated().reorderPoint()).isEqualTo(500);
        assertThat(more.stated().reorderPoint()).as("500 + (650 - 2 x 100)").isEqualTo(950);
        assertThat(more.planned().plannedAbove()).isEqualTo(450);
        assertThat(Objects.requireNonNull(more.stated().formula()))
                .endsWith("max(0, 650 - 100.0 x 2) = 450 is added: 950");
        assertThat(less.stated()).isEqualTo(none.stated());
        assertThat(less.planned().planned()).as("shown all the same").isEqualTo(150);
    }

    @Test
    void without_a_forecast_the_plans_alone_say_what_must_be_there() {
        DailyUse few = new DailyUse.TooFewDays(3);
        assertThat(row(few, 649, need("A", 1, 2, 650)).stated().reorderNow()).isTrue();
        assertThat(row(few, 650, need("A", 1, 2, 650)).stated().reorderNow()).isFalse();
        assertThat(row(few, 650, need("A", 1, 2, 650)).stated().reorderPoint()).isEqualTo(650);
        assertThat(row(few, 650, need("A", 1, 2, 650)).note()).contains("Only 3 days", "what plans need");
        assertThat(row(few, 0).stated().reorderPoint()).isNull();
    }

    @Test
    void numbers_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> new PlannedDemand(-1, 0)).hasMessageContaining("Planned need [-1]");
        assertThatThrownBy(() -> new PlannedDemand(1, -1)).hasMessageContaining("Days covered by plans");
    }
}
