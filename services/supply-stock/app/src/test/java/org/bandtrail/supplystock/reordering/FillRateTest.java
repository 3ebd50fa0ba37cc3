package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Harvey's mustard jars, S. Nahmias, Production and Operations Analysis, sections 5.4-5.5: lead-time demand normal with
 * mean 100 and sd 25 (statement read in variants, the original's figures from memory, values recomputed independently).
 */
class FillRateTest {
    private static final LeadTimeDemand MUSTARD = LeadTimeDemand.ofSd(100, 25);

    @Test
    void serving_98_percent_of_the_demand_needs_126_jars() {
        double point = FillRate.reorderPointFor(MUSTARD, 100, .98);
        assertThat((point - 100) / 25).isCloseTo(1.02124, within(5e-6));
        assertThat(point).isCloseTo(125.53, within(.005));
        assertThat(WholeUnits.roundedUp(point)).isEqualTo(126);
    }

    /** The book rounds 151.34 to 151 jars; rounded up, as ordered here, it is 152. */
    @Test
    void getting_through_98_percent_of_the_cycles_needs_151_jars_and_is_another_question() {
        ReorderPoint point = ReorderPoint.of(MUSTARD, new CycleServiceLevel(980));
        assertThat(point.exact()).isCloseTo(151.34, within(.005));
        assertThat(Math.round(point.exact())).isEqualTo(151);
        assertThat(FillRate.ofReorderPoint(MUSTARD, 100, point.exact())).isGreaterThan(.998);
    }

    @Test
    void the_optimal_policy_of_the_book_serves_99_59_percent() {
        assertThat(FillRate.ofReorderPoint(MUSTARD, 110.774, 142.568)).isCloseTo(.99590, within(5e-6));
    }

    @Test
    void both_directions_agree() {
        for (double wanted : new double[] {.01, .5, .9, .98, .999, .999_999}) {
            double point = FillRate.reorderPointFor(MUSTARD, 40, wanted);
            assertThat(FillRate.ofReorderPoint(MUSTARD, 40, point)).isCloseTo(wanted, within(1e-12));
        }
    }

    @Test
    void without_variability_only_what_the_point_is_too_low_is_not_served() {
        LeadTimeDemand certain = LeadTimeDemand.ofSd(100, 0);
        assertThat(FillRate.ofReorderPoint(certain, 50, 100)).isEqualTo(1);
        assertThat(FillRate.ofReorderPoint(certain, 50, 90)).isCloseTo(.8, within(1e-12));
        assertThat(FillRate.reorderPointFor(certain, 50, .8)).isCloseTo(90, within(1e-9));
    }

    @Test
    void far_above_all_demand_everything_is_served() {
        assertThat(FillRate.ofReorderPoint(MUSTARD, 100, 2_000)).isEqualTo(1);
    }

    @Test
    void inputs_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> FillRate.ofReorderPoint(MUSTARD, 0, 100)).hasMessageContaining("Order quantity [0]");
        assertThatThrownBy(() -> FillRate.ofReorderPoint(MUSTARD, 10, 80))
                .hasMessageContaining("Expected shortage of a cycle");
        assertThatThrownBy(() -> FillRate.reorderPointFor(MUSTARD, 100, 1)).hasMessageContaining("Fill rate [1]");
        assertThatThrownBy(() -> FillRate.reorderPointFor(MUSTARD, 100, 0)).hasMessageContaining("Fill rate [0]");
    }
}
