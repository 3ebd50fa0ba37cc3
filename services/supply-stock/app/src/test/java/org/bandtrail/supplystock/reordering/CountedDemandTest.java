package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Demand in pieces; all figures computed independently with SciPy 1.17 (scipy.stats.nbinom and poisson). */
class CountedDemandTest {
    private static final NegativeBinomialDemand TEN_30 = new NegativeBinomialDemand(10, 30);

    @Test
    void mean_10_and_variance_30_fit_r_5_and_p_one_third() {
        assertThat(TEN_30.shape()).isCloseTo(5, within(1e-12));
        assertThat(TEN_30.p()).isCloseTo(1 / 3.0, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, .00411523", "1, .01371742", "2, .02743484", "3, .04267642"})
    void the_first_probabilities_are_met(long k, double probability) {
        assertThat(TEN_30.probability(k)).isCloseTo(probability, within(5e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "10, 30, 9, 14, 17, 20, 24, 26",
        "2, 5.5, 1, 3, 5, 7, 9, 10",
        "40, 90, 39, 48, 52, 57, 61, 65",
        "0.3, 0.9, 0, 0, 1, 2, 3, 5",
        "10, 10, 10, 13, 14, 15, 17, 18"
    })
    void reorder_points_are_the_quantiles(
            double mean, double variance, long q50, long q80, long q90, long q95, long q98, long q99) {
        CountedDemand demand = CountedDemand.of(new LeadTimeDemand(mean, variance));
        assertThat(List.of(500, 800, 900, 950, 980, 990))
                .extracting(level -> demand.reorderPoint(new CycleServiceLevel(level)))
                .containsExactly(q50, q80, q90, q95, q98, q99);
    }

    @Test
    void pieces_short_of_a_stock_are_met() {
        assertThat(TEN_30.expectedShortage(20)).isCloseTo(.195510756, within(5e-10));
        assertThat(new NegativeBinomialDemand(2, 5.5).expectedShortage(3)).isCloseTo(.557926429, within(5e-10));
        assertThat(new PoissonDemand(10).expectedShortage(12)).isCloseTo(.530916254, within(5e-10));
        assertThat(TEN_30.expectedShortage(0)).isEqualTo(10);
    }

    @Test
    void a_million_pieces_are_still_computed() {
        assertThat(new NegativeBinomialDemand(1e6, 3e9).reorderPoint(new CycleServiceLevel(950)))
                .isEqualTo(1_091_765);
        assertThat(new PoissonDemand(1e6).reorderPoint(new CycleServiceLevel(950)))
                .isEqualTo(1_001_645);
    }

    @Test
    void probabilities_add_up_to_the_cumulative_ones() {
        for (CountedDemand demand : new CountedDemand[] {TEN_30, new PoissonDemand(10)}) {
            double sum = 0;
            for (long k = 0; k <= 60; k++) {
                sum += demand.probability(k);
                assertThat(demand.atMost(k)).as("%s at %d", demand, k).isCloseTo(sum, within(1e-12));
            }
            assertThat(demand.probability(-1)).isZero();
            assertThat(demand.atMost(-1)).isZero();
        }
    }

    @Test
    void the_kind_of_curve_follows_from_the_spread() {
        assertThat(CountedDemand.of(new LeadTimeDemand(10, 30)).distribution()).isEqualTo("negative binomial");
        assertThat(CountedDemand.of(new LeadTimeDemand(10, 10)).distribution()).isEqualTo("Poisson");
        assertThat(CountedDemand.of(new LeadTimeDemand(10, 4)).distribution()).isEqualTo("Poisson");
    }

    @Test
    void an_item_nobody_uses_is_reordered_at_nought() {
        CountedDemand none = CountedDemand.of(new LeadTimeDemand(0, 0));
        assertThat(none.reorderPoint(new CycleServiceLevel(999))).isZero();
        assertThat(none.expectedShortage(3)).isZero();
        assertThat(none.probability(0)).isEqualTo(1);
        CountedDemand delivered = CountedDemand.of(LeadTimeDemand.of(new DemandPerDay(3, 1), new LeadTime(0, 2)));
        assertThat(delivered.reorderPoint(new CycleServiceLevel(999))).isZero();
    }

    @Test
    void inputs_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> new NegativeBinomialDemand(10, 10)).hasMessageContaining("Variance of the pieces");
        assertThatThrownBy(() -> new NegativeBinomialDemand(0, 10)).hasMessageContaining("Mean pieces");
        assertThatThrownBy(() -> new PoissonDemand(2e6)).hasMessageContaining("Mean pieces");
        assertThatThrownBy(() -> TEN_30.expectedShortage(-1)).hasMessageContaining("Stock (pieces) [-1]");
    }
}
