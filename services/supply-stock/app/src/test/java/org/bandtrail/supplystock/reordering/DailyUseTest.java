package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.bandtrail.supplystock.reordering.DailyUse.Measured;
import org.bandtrail.supplystock.reordering.DailyUse.TooFewDays;
import org.junit.jupiter.api.Test;

/** Mean and spread of recorded use. */
class DailyUseTest {
    /**
     * Codling moth larvae on 30 trunk strips, Lavigne et al. 2010 (file codling_moths.csv of the epiphy package, read):
     * mean 5.566667, variance 36.736782 recomputed independently. Counts with many zeros, as use has.
     */
    private static final List<Long> TRUNK_STRIPS = List.of(
            4L, 11L, 4L, 3L, 2L, 0L, 0L, 0L, 0L, 1L, 1L, 0L, 3L, 1L, 1L, 14L, 1L, 12L, 4L, 0L, 0L, 7L, 1L, 9L, 10L, 14L,
            18L, 16L, 14L, 16L);

    @Test
    void a_published_series_with_zeros_has_its_published_mean_and_variance() {
        Measured use = (Measured) DailyUse.of(TRUNK_STRIPS);
        assertThat(use.perDay().mean()).isCloseTo(5.566667, within(5e-7));
        assertThat(use.perDay().variance()).isCloseTo(36.736782, within(5e-7));
        assertThat(use.daysObserved()).isEqualTo(30);
        assertThat(use.daysWithUse()).isEqualTo(23);
    }

    /**
     * NIST StRD univariate data NumAcc3 and NumAcc4 (from memory), times ten: 1,001 values, certified mean 1000000.2
     * and 10000000.2, standard deviation 0.1. A one-pass variance fails them.
     */
    @Test
    void large_values_with_a_tiny_spread_keep_their_digits() {
        for (long mean : new long[] {10_000_002L, 100_000_002L}) {
            List<Long> series = LongStream.rangeClosed(0, 1_000)
                    .mapToObj(value -> value == 0 ? mean : mean + (value % 2 == 1 ? -1 : 1))
                    .toList();
            Measured use = (Measured) DailyUse.of(series);
            assertThat(use.perDay().mean()).isEqualTo(mean);
            assertThat(use.perDay().sd()).isEqualTo(1);
        }
    }

    @Test
    void thirteen_days_are_too_few_and_say_so_and_fourteen_are_enough() {
        DailyUse tooFew = DailyUse.of(Collections.nCopies(13, 5L));
        assertThat(tooFew).isEqualTo(new TooFewDays(13));
        assertThat(((TooFewDays) tooFew).sentence()).contains("13 of at least 14 days");
        assertThat(DailyUse.of(Collections.nCopies(14, 5L))).isEqualTo(new Measured(DemandPerDay.constant(5), 14, 14));
    }

    @Test
    void days_without_an_entry_are_days_without_use() {
        LocalDate first = LocalDate.of(2026, 4, 1);
        Measured use = (Measured) DailyUse.between(
                first,
                LocalDate.of(2026, 4, 20),
                Map.of(first, 100L, first.plusDays(19), 300L, first.plusDays(20), 9_999L));
        assertThat(use.daysObserved()).isEqualTo(20);
        assertThat(use.daysWithUse()).isEqualTo(2);
        assertThat(use.perDay().mean()).isEqualTo(20);
    }

    @Test
    void before_the_first_day_nothing_was_observed() {
        LocalDate first = LocalDate.of(2026, 4, 1);
        assertThat(DailyUse.between(first, first.minusDays(3), Map.of())).isEqualTo(new TooFewDays(0));
    }

    @Test
    void a_negative_day_is_refused_by_name() {
        assertThatThrownBy(() -> DailyUse.of(List.of(3L, -1L))).hasMessageContaining("Use of day 2 [-1]");
    }
}
