package org.bandtrail.supplystock.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.junit.jupiter.api.Test;

/**
 * The worked example of OpenStax, Principles of Accounting, volume 1, chapter 10, "The Spy Who Loves You" (data from
 * memory, arithmetic recomputed independently): opening 150 at 21, 120 sold, 225 bought at 27, 180 sold, 210 bought at
 * 33; 585 units for 16,155, 300 sold, 285 left. Whole dollars in the book, cents here.
 */
class PoolTest {
    private static final long BOUGHT = 16_155_00;

    @Test
    void moving_average_costs_7252_94_and_leaves_8902_06() {
        Pool pool = new Pool("USD", List.of());
        assertThat(spy(pool, CostMethod.MOVING_AVERAGE)).isEqualTo(7_252_94);
        assertThat(pool.minor()).isEqualTo(8_902_06).isEqualTo(BOUGHT - 7_252_94);
    }

    @Test
    void oldest_first_costs_7200_and_leaves_8955() {
        Pool pool = new Pool("USD", List.of());
        assertThat(spy(pool, CostMethod.OLDEST_FIRST)).isEqualTo(7_200_00);
        assertThat(pool.minor()).isEqualTo(8_955_00);
        assertThat(pool.layers()).extracting(Pool.Layer::batch).containsExactly("second", "third");
    }

    @Test
    void a_method_that_changes_between_two_years_revalues_nothing() {
        Pool pool = new Pool("USD", List.of());
        pool.put("opening", 150, 3_150_00, 0);
        long first = pool.issue(120, CostMethod.MOVING_AVERAGE);
        pool.put("second", 225, 6_075_00, 0);
        long second = pool.issue(180, CostMethod.OLDEST_FIRST);
        long third = pool.issue(50, CostMethod.MOVING_AVERAGE);
        assertThat(first + second + third + pool.minor()).isEqualTo(3_150_00 + 6_075_00);
        assertThat(second).as("30 at 21 and 150 at 27").isEqualTo(630_00 + 4_050_00);
    }

    /** The average over the whole period, at the end of it: 27.615385 each. */
    @Test
    void weighted_average_of_the_period_costs_8284_62_and_leaves_7870_38() {
        Pool pool = new Pool("USD", List.of());
        pool.put("opening", 150, 3_150_00, 0);
        pool.put("second", 225, 6_075_00, 0);
        pool.put("third", 210, 6_930_00, 0);
        assertThat(pool.issue(300, CostMethod.MOVING_AVERAGE)).isEqualTo(8_284_62);
        assertThat(pool.minor()).isEqualTo(7_870_38);
    }

    /** A unit price rounded to 27.62 first gives 8,286.00 and 7,871.70, which is 2.70 more than was paid. */
    @Test
    void a_price_rounded_before_it_is_multiplied_does_not_add_up_and_is_not_what_we_do() {
        long rounded = Share.of(BOUGHT, 1, 585);
        assertThat(rounded).isEqualTo(27_62);
        assertThat(rounded * 300 + rounded * 285).isEqualTo(8_286_00 + 7_871_70).isNotEqualTo(BOUGHT);
        assertThat(Share.of(BOUGHT, 300, 585) + (BOUGHT - Share.of(BOUGHT, 300, 585)))
                .isEqualTo(BOUGHT);
    }

    /** A worked example of a homework site, recomputed: 300 at 8, 175 sold, 375 at 10, 280 sold. */
    @Test
    void the_average_of_9_50_costs_2660_and_leaves_2090() {
        Pool pool = new Pool("USD", List.of());
        pool.put("first", 300, 2_400_00, 0);
        assertThat(pool.issue(175, CostMethod.MOVING_AVERAGE)).isEqualTo(1_400_00);
        pool.put("second", 375, 3_750_00, 0);
        assertThat(pool.issue(280, CostMethod.MOVING_AVERAGE)).isEqualTo(2_660_00);
        assertThat(pool.minor()).isEqualTo(2_090_00);
    }

    @Test
    void the_last_piece_takes_all_that_is_left() {
        Pool pool = new Pool("USD", List.of());
        pool.put("thirds", 3, 100, 0);
        assertThat(List.of(
                        pool.issue(1, CostMethod.MOVING_AVERAGE),
                        pool.issue(1, CostMethod.MOVING_AVERAGE),
                        pool.issue(1, CostMethod.MOVING_AVERAGE)))
                .containsExactly(33L, 34L, 33L);
        assertThat(pool.layers()).isEmpty();
        assertThat(pool.issue(5, CostMethod.MOVING_AVERAGE))
                .as("nothing there costs nothing")
                .isZero();
    }

    @Test
    void value_without_pieces_waits_for_pieces() {
        Pool pool = new Pool("USD", List.of());
        pool.raise("F-1", 7);
        assertThat(pool.issue(1, CostMethod.OLDEST_FIRST)).isZero();
        pool.put("F-2", 10, 100, 0);
        assertThat(pool.layers()).containsExactly(new Pool.Layer("F-2", 10, 107));
        assertThat(pool.lower("F-2", 200)).as("what the pool does not have").isEqualTo(93);
    }

    private static long spy(Pool pool, CostMethod method) {
        pool.put("opening", 150, 3_150_00, 0);
        long first = pool.issue(120, method);
        pool.put("second", 225, 6_075_00, 0);
        long second = pool.issue(180, method);
        pool.put("third", 210, 6_930_00, 0);
        return first + second;
    }
}
