package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lead-time demand, safety stock and reorder point against published worked examples; the source beside each. */
class ReorderPointTest {
    /** What tables print for 95 percent. */
    private static final double TABLE_Z = 1.65;

    private static final CycleServiceLevel LEVEL_95 = new CycleServiceLevel(950);

    @ParameterizedTest
    @CsvSource({
        "900, 1.281552",
        "950, 1.644854",
        "975, 1.959964",
        "980, 2.053749",
        "990, 2.326348",
        "995, 2.575829",
        "999, 3.090232"
    })
    void z_is_the_exact_quantile_of_scipy_and_every_printed_table(int permille, double z) {
        assertThat(new CycleServiceLevel(permille).z()).isCloseTo(z, within(5e-7));
    }

    /** Carpet store, course slides cs.unca.edu (statement read, value recomputed): 10,000 a year of 311 days. */
    @Test
    void carpet_store_with_constant_demand_reorders_at_321_54() {
        DemandPerDay use = DemandPerDay.constant(10_000 / 311.0);
        ReorderPoint point = ReorderPoint.of(LeadTimeDemand.of(use, LeadTime.fixed(10)), LEVEL_95);
        assertThat(point.exact()).isCloseTo(321.54, within(.005));
        assertThat(point.rounded()).isEqualTo(322);
    }

    /** Variable demand, B. W. Taylor, Introduction to Management Science, chapter 16 (flylib copy read). */
    @Test
    void taylor_with_variable_demand_needs_26_09_of_safety_and_reorders_at_326_09() {
        LeadTimeDemand demand = LeadTimeDemand.of(new DemandPerDay(30, 5), LeadTime.fixed(10));
        ReorderPoint point = ReorderPoint.withZ(demand, TABLE_Z);
        assertThat(point.safety().exact()).isCloseTo(26.09, within(.005));
        assertThat(point.exact()).isCloseTo(326.09, within(.005));
        assertThat(SafetyStock.of(demand, LEVEL_95).exact()).isCloseTo(26.01, within(.005));
        assertThat(point.safety().rounded()).isEqualTo(27);
        assertThat(point.rounded()).isEqualTo(327);
    }

    /** Constant demand, variable lead time (statement read in a question-and-answer copy, value recomputed). */
    @Test
    void five_a_day_over_three_days_with_sd_two_needs_16_5_and_reorders_at_31_5() {
        LeadTimeDemand demand = LeadTimeDemand.of(DemandPerDay.constant(5), new LeadTime(3, 2));
        assertThat(demand.sd()).isCloseTo(10, within(1e-12));
        ReorderPoint point = ReorderPoint.withZ(demand, TABLE_Z);
        assertThat(point.safety().exact()).isCloseTo(16.5, within(1e-12));
        assertThat(point.exact()).isCloseTo(31.5, within(1e-12));
    }

    /** Both vary, in the style of J. Heizer and B. Render (from memory, recomputed independently). */
    @Test
    void where_use_and_lead_time_vary_sigma_is_154_21_and_the_point_1004_44() {
        LeadTimeDemand demand = LeadTimeDemand.of(new DemandPerDay(150, 16), new LeadTime(5, 1));
        assertThat(demand.sd()).isCloseTo(154.21, within(.005));
        assertThat(ReorderPoint.withZ(demand, TABLE_Z).exact()).isCloseTo(1_004.44, within(.005));
    }

    /** Oil, 20 a day, 14 days (statement read in a question-and-answer copy, value recomputed with the exact z). */
    @Test
    void oil_reorders_at_280_without_and_339_27_with_variability_at_99_5_percent() {
        LeadTimeDemand constant = LeadTimeDemand.of(DemandPerDay.constant(20), LeadTime.fixed(14));
        LeadTimeDemand variable = LeadTimeDemand.of(new DemandPerDay(20, 6.15), LeadTime.fixed(14));
        CycleServiceLevel level = new CycleServiceLevel(995);
        assertThat(ReorderPoint.of(constant, level).exact()).isCloseTo(280, within(1e-9));
        assertThat(SafetyStock.of(variable, level).exact()).isCloseTo(59.27, within(.005));
        assertThat(ReorderPoint.of(variable, level).exact()).isCloseTo(339.27, within(.005));
    }

    @Test
    void noise_of_the_floating_point_sum_does_not_order_one_more() {
        assertThat(new ReorderPoint(LeadTimeDemand.ofSd(300.000_000_1, 0), new SafetyStock(0)).rounded())
                .isEqualTo(300);
        assertThat(new ReorderPoint(LeadTimeDemand.ofSd(300.001, 0), new SafetyStock(0)).rounded())
                .isEqualTo(301);
    }

    @Test
    void half_service_needs_no_safety_stock() {
        assertThat(SafetyStock.of(LeadTimeDemand.ofSd(100, 25), new CycleServiceLevel(500))
                        .exact())
                .isZero();
    }

    @Test
    void inputs_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> new CycleServiceLevel(1_000))
                .hasMessage("Service level (permille) [1000] is out of range. Give 500 to 999.");
        assertThatThrownBy(() -> new CycleServiceLevel(499)).hasMessageContaining("Service level");
        assertThatThrownBy(() -> new LeadTime(-1, 0)).hasMessageContaining("Lead time (days) [-1]");
        assertThatThrownBy(() -> new LeadTime(1, Double.NaN)).hasMessageContaining("deviation of the lead time");
        assertThatThrownBy(() -> new DemandPerDay(-.5, 0)).hasMessageContaining("Mean use per day [-0.5]");
        assertThatThrownBy(() -> new DemandPerDay(1, -1)).hasMessageContaining("deviation of the use per day");
        assertThatThrownBy(() -> ReorderPoint.withZ(LeadTimeDemand.ofSd(1, 1), 11))
                .hasMessageContaining("z [11]");
    }
}
