package org.bandtrail.supplystock.reorderpoints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.reordering.CycleServiceLevel;
import org.bandtrail.supplystock.reordering.DailyUse;
import org.bandtrail.supplystock.reordering.DemandPerDay;
import org.bandtrail.supplystock.reordering.LeadTime;
import org.bandtrail.supplystock.reorderpoints.UseRecords.ItemAtDepot;
import org.junit.jupiter.api.Test;

/** From use and supply figures to a row that can be followed with a pocket calculator. */
class ReorderPointsTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 5, 30);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    /** Heizer/Render style example (from memory, recomputed independently), here with the exact z of 95 percent. */
    @Test
    void a_tape_row_states_point_inputs_formula_and_source() {
        ReorderRow row = row(MaterialKind.TAPE, 900, measured(150, 16), item(5, 1, 950));

        assertThat(row.unit()).isEqualTo("mm");
        assertThat(row.stated().sdOfLeadTime()).isCloseTo(154.21, within(.005));
        // 1.644854 x 154.21 = 253.65
        assertThat(row.stated().safetyStock()).isEqualTo(254);
        assertThat(row.stated().reorderPoint()).isEqualTo(1_004);
        assertThat(row.stated().reorderNow()).isTrue();
        assertThat(row.stated().formula())
                .isEqualTo("R = m L + z sqrt(L s^2 + m^2 sL^2)"
                        + " = 150.0 x 5 + 1.6449 x sqrt(5 x 16.0^2 + 150.0^2 x 1^2) = 1004");
        assertThat(row.stated().source()).contains("Silver");
        assertThat(row.ends().runsOutOn()).isEqualTo(TODAY.plusDays(6));
        assertThat(row.note()).isNull();
    }

    @Test
    void exactly_at_the_point_is_the_time_to_order_and_one_more_is_not() {
        assertThat(row(MaterialKind.TAPE, 1_004, measured(150, 16), item(5, 1, 950))
                        .stated()
                        .reorderNow())
                .isTrue();
        assertThat(row(MaterialKind.TAPE, 1_005, measured(150, 16), item(5, 1, 950))
                        .stated()
                        .reorderNow())
                .isFalse();
    }

    @Test
    void what_is_on_order_puts_the_next_order_off_but_not_the_day_on_which_the_shelf_is_empty() {
        ItemRow item = item(5, 1, 950);
        ItemAtDepot shelf = new ItemAtDepot("TAPE-1", MaterialKind.TAPE, "NORTH", 900, FIRST);
        ReorderRow enough = ReorderPoints.row(shelf, 105, measured(150, 16), item, FIRST, LAST, TODAY, List.of());
        ReorderRow tooLittle = ReorderPoints.row(shelf, 104, measured(150, 16), item, FIRST, LAST, TODAY, List.of());

        assertThat(enough.onOrder()).isEqualTo(105);
        assertThat(enough.stated().reorderNow()).isFalse();
        assertThat(tooLittle.stated().reorderNow()).isTrue();
        assertThat(enough.ends()).isEqualTo(tooLittle.ends());
    }

    /** Mean 10 and variance 30 of the lead time: negative binomial, 95 percent quantile 20 (SciPy). */
    @Test
    void fasteners_are_counted_and_not_measured() {
        Reckoning pieces = Reckoning.of(
                MaterialKind.FASTENER,
                new DemandPerDay(1, Math.sqrt(3)),
                LeadTime.fixed(10),
                new CycleServiceLevel(950));
        assertThat(pieces.reorderPoint()).isEqualTo(20);
        assertThat(pieces.safetyStock()).isEqualTo(10);
        assertThat(pieces.z()).isNull();
        assertThat(pieces.formula())
                .isEqualTo(
                        "R = smallest r with P(X <= r) >= 0.950, X negative binomial with mean m L = 1.00 x 10 = 10.0"
                                + " and variance L s^2 + m^2 sL^2 = 10 x 1.73^2 + 1.00^2 x 0^2 = 30.0: R = 20");
        assertThat(pieces.source()).contains("Silver").contains("Johnson");
    }

    @Test
    void beyond_a_million_pieces_the_normal_curve_is_near_enough() {
        Reckoning many = Reckoning.of(
                MaterialKind.FASTENER, new DemandPerDay(200_000, 0), LeadTime.fixed(10), new CycleServiceLevel(950));
        assertThat(many.reorderPoint()).isEqualTo(2_000_000);
        assertThat(many.z()).isNotNull();
    }

    @Test
    void too_few_days_give_a_sentence_and_no_number() {
        ReorderRow row = row(MaterialKind.TAPE, 900, new DailyUse.TooFewDays(6), item(5, 1, 950));
        assertThat(row.stated().reorderPoint()).isNull();
        assertThat(row.stated().reorderNow()).isFalse();
        assertThat(row.ends().runsOutOn()).isNull();
        assertThat(row.observed().daysObserved()).isEqualTo(6);
        assertThat(row.note()).contains("6 of at least 14 days");
    }

    @Test
    void an_item_nobody_registered_has_use_and_an_end_but_no_point() {
        ReorderRow row = ReorderPoints.row(
                new ItemAtDepot("TAPE-1", MaterialKind.TAPE, "NORTH", 900, FIRST),
                0,
                measured(150, 16),
                null,
                FIRST,
                LAST,
                TODAY,
                List.of());
        assertThat(row.observed().meanPerDay()).isEqualTo(150);
        assertThat(row.ends().runsOutOn()).isEqualTo(TODAY.plusDays(6));
        assertThat(row.stated().reorderPoint()).isNull();
        assertThat(row.note()).contains("TAPE-1 is not registered");
    }

    private static ReorderRow row(MaterialKind kind, long onHand, DailyUse use, ItemRow item) {
        return ReorderPoints.row(
                new ItemAtDepot(item.materialCode(), kind, "NORTH", onHand, FIRST),
                0,
                use,
                item,
                FIRST,
                LAST,
                TODAY,
                List.of());
    }

    private static DailyUse measured(double mean, double sd) {
        return new DailyUse.Measured(new DemandPerDay(mean, sd), 30, 20);
    }

    private static ItemRow item(int leadTimeDays, int leadTimeSdDays, int permille) {
        return new ItemRow(
                "TAPE-1",
                MaterialKind.TAPE,
                "Sticky tape",
                127L,
                null,
                50_000L,
                null,
                Money.of(18_00, "USD"),
                leadTimeDays,
                leadTimeSdDays,
                permille);
    }
}
