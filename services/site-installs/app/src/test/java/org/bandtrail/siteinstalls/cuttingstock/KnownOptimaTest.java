package org.bandtrail.siteinstalls.cuttingstock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jobs whose optimum is known from elsewhere; the sources stand beside the values. */
class KnownOptimaTest {

    /**
     * Paper rolls of 5,600 mm: 73 rolls and 0.40117 % waste. The classic example of the encyclopedia article "Cutting
     * stock problem", its optimum computed again by a general MIP solver (check-values.md D1).
     */
    @Test
    void the_paper_rolls_need_seventy_three() {
        CuttingPlan plan = CuttingPlanner.plan(
                Classic.job(
                        5600, 90, 1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050,
                        12, 2100, 14, 2140, 16, 2150, 18, 2200, 20),
                Patience.endless());

        assertThat(plan.newReels()).isEqualTo(73);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.piecesMm()).isEqualTo(407_160);
        assertThat(100.0 * plan.lossMm() / (73 * 5600)).isEqualTo(0.40117, within(0.000005));
    }

    /** Linear bound 46.25, optimum 47: computed by a general MIP solver (check-values.md D2). */
    @Test
    void a_fraction_of_a_roll_more_than_the_linear_bound_is_a_whole_roll() {
        CuttingPlan plan =
                CuttingPlanner.plan(Classic.job(110, 60, 20, 48, 45, 35, 50, 24, 55, 10, 75, 8), Patience.endless());

        assertThat(plan.newReels()).isEqualTo(47);
        assertThat(plan.proven()).isTrue();
    }

    /** Optima computed by a general MIP solver (check-values.md D3); first fit takes 48 for the last. */
    @ParameterizedTest
    @CsvSource({
        "PM_u010_01.txt, 5",
        "PM_u020_01.txt, 7",
        "PM_u030_01.txt, 12",
        "PM_u060_01.txt, 25",
        "PM_u120_01.txt, 47"
    })
    void the_files_of_the_literature_are_solved_and_proven(String file, int reels) {
        CuttingPlan plan = CuttingPlanner.plan(Classic.file(file), Patience.endless());

        assertThat(plan.newReels()).isEqualTo(reels);
        assertThat(plan.proven()).isTrue();
    }
}
