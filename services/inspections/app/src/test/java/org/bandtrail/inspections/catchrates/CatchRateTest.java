package org.bandtrail.inspections.catchrates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bandtrail.inspections.catchrates.CatchRate.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatchRateTest {

    /** Garwood 1936; independent computation with scipy.stats.chi2, 4 decimals. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 3.6889",
        "1, 0.0253, 5.5716",
        "2, 0.2422, 7.2247",
        "3, 0.6187, 8.7673",
        "4, 1.0899, 10.2416",
        "5, 1.6235, 11.6683",
        "10, 4.7954, 18.3904",
        "20, 12.2165, 30.8884",
        "25, 16.1787, 36.9049",
        "50, 37.1110, 65.9188",
        "100, 81.3640, 121.6268"
    })
    void the_interval_is_garwoods(long count, double low, double high) {
        PoissonInterval interval = PoissonInterval.of(count, 0.95);

        assertThat(interval.low()).isCloseTo(low, within(0.00005));
        assertThat(interval.high()).isCloseTo(high, within(0.00005));
    }

    /** Published: graphpad.com FAQ "confidence interval of a Poisson count", 25 objects. */
    @ParameterizedTest
    @CsvSource({"0.90, 17.38, 34.92", "0.95, 16.18, 36.90", "0.99, 14.00, 41.00"})
    void twenty_five_objects_have_the_published_intervals(double confidence, double low, double high) {
        PoissonInterval interval = PoissonInterval.of(25, confidence);

        assertThat(interval.low()).isCloseTo(low, within(0.005));
        assertThat(interval.high()).isCloseTo(high, within(0.005));
    }

    /** FAO/IAEA 2003, F / (T x D): 1,176 insects, 42 bands, 14 days give 2.0 (definition from memory). */
    @Test
    void forty_two_bands_of_fourteen_days_with_1176_insects_catch_two_a_day() {
        List<Reading> readings = Collections.nCopies(42, new Reading(true, 28, 14, false));

        assertThat(CatchRate.of(readings).perBandDay()).isEqualTo(2.0);
    }

    /** Independent computation (scipy): 5 in 12,400 band-days is .4032 (.1309 to .9410) per 1,000. */
    @Test
    void five_animals_in_12400_band_days_have_the_computed_interval() {
        CatchRate rate = CatchRate.of(List.of(new Reading(true, 5, 12_400, false)));

        assertThat(rate.perBandDay() * 1000).isCloseTo(0.4032, within(0.00005));
        assertThat(rate.low() * 1000).isCloseTo(0.1309, within(0.00005));
        assertThat(rate.high() * 1000).isCloseTo(0.9410, within(0.00005));
    }

    @Test
    void a_band_that_was_not_read_changes_neither_numerator_nor_denominator() {
        List<Reading> readings = new ArrayList<>(List.of(new Reading(true, 12, 4, false)));
        CatchRate without = CatchRate.of(readings);
        readings.add(new Reading(false, 0, 9, false));

        assertThat(CatchRate.of(readings)).isEqualTo(without);
    }

    @Test
    void one_full_band_makes_the_rate_a_lower_bound() {
        assertThat(CatchRate.of(List.of(new Reading(true, 1, 2, false), new Reading(true, 60, 2, true)))
                        .lowerBound())
                .isTrue();
        assertThat(CatchRate.of(List.of(new Reading(true, 1, 2, false))).lowerBound())
                .isFalse();
    }

    @Test
    void values_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> PoissonInterval.of(-1, 0.95)).hasMessageContaining("-1");
        assertThatThrownBy(() -> PoissonInterval.of(1, 1)).hasMessageContaining("1.0");
        assertThatThrownBy(() -> new Reading(true, 1, 0, false)).hasMessageContaining("0.0");
        assertThatThrownBy(() -> CatchRate.of(List.of(new Reading(false, 0, 3, false))))
                .hasMessageContaining("no rate");
    }
}
