package org.bandtrail.siteinstalls.cuttingstock.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The knapsack against trying every way to cut a reel. */
class PricingTest {
    /** All whole multiples of 5 mm, so that they are counted in a grain above 1; the reels are not. */
    private static final int[] WEIGHTS = {235, 155, 100, 65};

    private static final int[] DEMAND = {2, 3, 1, 4};

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void no_way_to_cut_a_reel_is_worth_more_than_the_one_found(long seed) {
        Chance chance = new Chance(seed);
        int length = 300 + chance.below(600);
        CutTask task = CutTask.of(
                WEIGHTS, DEMAND, new int[] {length}, new boolean[] {true}, new int[] {0}, 3, 75 + chance.below(200), 5);
        ReelClasses classes = new ReelClasses(task);
        long[] prices = new long[WEIGHTS.length];
        for (int kind = 0; kind < prices.length; kind++) {
            prices[kind] = (long) WEIGHTS[kind] * (100 + chance.below(100));
        }
        Pricing pricing = new Pricing(task, classes);
        assertThat(pricing.solve(prices, () -> false)).isTrue();

        List<Pricing.Offer> offers = pricing.best(0, 3);
        long found = offers.isEmpty() ? 0 : offers.getFirst().gain();

        assertThat(found).isEqualTo(byTrying(task, prices, 0, 0, 0));
        if (!offers.isEmpty()) {
            Column column = pricing.column(offers.getFirst());
            long worth = 0;
            for (int i = 0; i < column.kinds().length; i++) {
                worth += prices[column.kinds()[i]] * column.counts()[i];
            }
            assertThat(worth - Pricing.SCALE * column.cost()).isEqualTo(found);
        }
    }

    private static long byTrying(CutTask task, long[] prices, int kind, long weight, long worth) {
        if (weight > task.capacity(0)) {
            return Long.MIN_VALUE;
        }
        if (kind == WEIGHTS.length) {
            return Math.max(0, worth - Pricing.SCALE * task.cost(0, weight));
        }
        long best = Long.MIN_VALUE;
        for (int count = 0; count <= DEMAND[kind]; count++) {
            best = Math.max(
                    best,
                    byTrying(
                            task,
                            prices,
                            kind + 1,
                            weight + (long) count * WEIGHTS[kind],
                            worth + prices[kind] * count));
        }
        return best;
    }
}
