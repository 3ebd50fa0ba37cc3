package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.bandtrail.supplystock.reordering.DailyUse.Measured;
import org.junit.jupiter.api.Test;

/** When the stock ends. The interval's ends were found independently (SciPy 1.17: brentq on the formula, t.ppf). */
class RunsOutTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

    @Test
    void a_steady_50_a_day_empties_1000_on_the_twentieth_day_from_now_for_certain() {
        RunsOut certain = RunsOut.on(1_000, use(50, 0, 30), TODAY, 800).orElseThrow();
        assertThat(certain).isEqualTo(new RunsOut(day(20), day(20), day(20)));
    }

    @Test
    void the_interval_is_that_of_an_independent_root_finder() {
        // 17.264, 20, 23.384 days
        assertThat(RunsOut.on(1_000, use(50, 20, 30), TODAY, 800)).contains(new RunsOut(day(20), day(17), day(23)));
        // 27.748, 39.695, 60.320 days
        assertThat(RunsOut.on(12_345, use(311, 450, 60), TODAY, 800)).contains(new RunsOut(day(39), day(27), day(60)));
    }

    @Test
    void where_the_mean_is_hardly_known_no_end_is_promised() {
        // 77.889 and 200 days; the mean 5 is below t(13, .90) 20 / sqrt(14) = 7.2
        assertThat(RunsOut.on(1_000, use(5, 20, 14), TODAY, 800)).contains(new RunsOut(day(200), day(77), null));
    }

    @Test
    void four_of_five_simulated_stocks_end_inside_the_interval() {
        SplittableRandom random = new SplittableRandom(20_260_501);
        int runs = 4_000;
        int early = 0;
        int late = 0;
        for (int run = 0; run < runs; run++) {
            Measured seen = (Measured)
                    DailyUse.of(Stream.generate(() -> dayOf(random)).limit(30).toList());
            RunsOut interval = RunsOut.on(8_000_000, seen, TODAY, 800).orElseThrow();
            LocalDate truth = TODAY;
            for (long left = 8_000_000 - dayOf(random); left >= 0; left -= dayOf(random)) {
                truth = truth.plusDays(1);
            }
            early += truth.isBefore(interval.earliest()) ? 1 : 0;
            late += interval.latest() != null && truth.isAfter(interval.latest()) ? 1 : 0;
        }
        // One tenth on each side; the standard error of a simulated share is half a percent, days are whole.
        assertThat(early / (double) runs).isCloseTo(.10, within(.02));
        assertThat(late / (double) runs).isCloseTo(.10, within(.02));
    }

    @Test
    void an_empty_shelf_and_a_deficit_have_run_out_already() {
        assertThat(RunsOut.on(0, use(50, 20, 30), TODAY, 800).orElseThrow().expected())
                .isEqualTo(TODAY);
        assertThat(RunsOut.on(-70, use(50, 20, 30), TODAY, 800).orElseThrow().earliest())
                .isEqualTo(TODAY);
    }

    @Test
    void what_nobody_uses_and_what_lasts_beyond_ten_years_gets_no_date() {
        assertThat(RunsOut.on(1_000, use(0, 0, 30), TODAY, 800)).isEmpty();
        assertThat(RunsOut.on(3_651, use(1, 0, 30), TODAY, 800)).isEmpty();
        assertThat(RunsOut.on(3_650, use(1, 0, 30), TODAY, 800)).isPresent();
    }

    @Test
    void a_level_out_of_range_is_refused_by_name() {
        assertThatThrownBy(() -> RunsOut.on(1, use(1, 0, 30), TODAY, 995)).hasMessageContaining("[995]");
    }

    /** A day's use in mm, normal with mean 50 m and sd 10 m, never below nought. */
    private static long dayOf(SplittableRandom random) {
        return Math.max(0, Math.round(50_000 + 10_000 * random.nextGaussian()));
    }

    private static Measured use(double mean, double sd, int days) {
        return new Measured(new DemandPerDay(mean, sd), days, days);
    }

    private static LocalDate day(long days) {
        return TODAY.plusDays(days);
    }
}
