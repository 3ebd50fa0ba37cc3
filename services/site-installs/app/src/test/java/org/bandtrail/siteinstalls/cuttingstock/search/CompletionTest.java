package org.bandtrail.siteinstalls.cuttingstock.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Looking through all plans cleverly against looking through all of them plainly. */
class CompletionTest {
    private static final int[] DEMAND = {1, 2, 1, 2};

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void the_cheapest_plan_is_found_and_a_cheaper_one_denied(long seed) {
        CutTask task = task(new Chance(seed));
        long best = cheapest(task, 0, 0, new long[task.reels()]);

        Completion enough = new Completion(task, 100_000, () -> false);
        Layout found = Objects.requireNonNull(enough.run(best));
        assertThat(found.uncut()).isEmpty();
        assertThat(found.score().cost()).isEqualTo(best);

        Completion less = new Completion(task, 100_000, () -> false);
        assertThat(less.run(best - 1)).isNull();
        assertThat(less.everything()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void what_was_not_looked_through_denies_nothing(int nodes) {
        CutTask task = task(new Chance(1));
        Completion some = new Completion(task, nodes, () -> false);

        assertThat(some.run(cheapest(task, 0, 0, new long[task.reels()]) - 1)).isNull();
        assertThat(some.everything()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void patience_that_is_over_denies_nothing(long seed) {
        Completion over = new Completion(task(new Chance(seed)), 100_000, () -> true);

        assertThat(over.run(Long.MAX_VALUE / 4)).isNull();
        assertThat(over.everything()).isFalse();
    }

    /** Four kinds, five reels of which two are alike and together hold all; rests from some length keep, or none. */
    private static CutTask task(Chance chance) {
        int[] weights = {50 + chance.below(20), 35 + chance.below(10), 22 + chance.below(8), 8 + chance.below(9)};
        int[] lengths = {90 + chance.below(30), 60 + chance.below(50), 60 + chance.below(50), 130, 130};
        boolean[] fresh = {false, false, chance.percent(50), true, true};
        int usable = chance.percent(50) ? 10_000 : 5 + chance.below(30);
        return CutTask.of(
                weights, DEMAND, lengths, fresh, new int[] {0, 1, 2, 3, 4}, chance.below(4), usable, chance.below(20));
    }

    private static long cheapest(CutTask task, int kind, int done, long[] on) {
        if (kind == task.kinds()) {
            long cost = 0;
            for (int reel = 0; reel < on.length; reel++) {
                cost += task.cost(reel, on[reel]);
            }
            return cost;
        }
        if (done == task.demand()[kind]) {
            return cheapest(task, kind + 1, 0, on);
        }
        long best = Long.MAX_VALUE;
        for (int reel = 0; reel < on.length; reel++) {
            if (on[reel] + task.weights()[kind] <= task.capacity(reel)) {
                on[reel] += task.weights()[kind];
                best = Math.min(best, cheapest(task, kind, done + 1, on));
                on[reel] -= task.weights()[kind];
            }
        }
        return best;
    }
}
