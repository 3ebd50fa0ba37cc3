package org.bandtrail.supplystock.costs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A reel's cost over the pieces cut from it. */
class PieceCostTest {

    @Test
    void a_reel_of_three_metres_for_ten_dollars_costs_333_334_333_by_the_metre() {
        PieceCost reel = new PieceCost(10_00, 3_000);
        assertThat(reel.between(0, 1_000)).isEqualTo(3_33);
        assertThat(reel.between(1_000, 2_000)).isEqualTo(3_34);
        assertThat(reel.between(2_000, 3_000)).isEqualTo(3_33);
    }

    @Test
    void half_a_minor_unit_is_rounded_up() {
        assertThat(new PieceCost(1, 2).ofFirst(1)).isEqualTo(1);
        assertThat(new PieceCost(3, 2).ofFirst(1)).isEqualTo(2);
        assertThat(new PieceCost(4_999, 10_000).ofFirst(1)).isZero();
    }

    @Test
    void beyond_either_end_of_the_reel_nothing_more_is_charged() {
        PieceCost reel = new PieceCost(12_50, 30_000);
        assertThat(reel.ofFirst(30_001)).isEqualTo(12_50);
        assertThat(reel.between(29_000, 31_000)).isEqualTo(reel.between(29_000, 30_000));
        assertThat(reel.ofFirst(-1)).isZero();
    }

    @Test
    void a_piece_that_comes_back_gives_back_what_it_cost() {
        PieceCost reel = new PieceCost(10_01, 7_777);
        assertThat(reel.between(500, 1_234)).isEqualTo(-reel.between(1_234, 500));
    }

    @Test
    void the_largest_reel_at_the_largest_price_does_not_overflow() {
        PieceCost reel = new PieceCost(1_000_000_000_000_000L, 10_000_000_000_000L);
        assertThat(reel.ofFirst(5_000_000_000_000L)).isEqualTo(500_000_000_000_000L);
    }

    @Test
    void in_any_sizes_and_any_order_the_pieces_cost_the_total_and_each_is_within_one_unit() {
        SplittableRandom random = new SplittableRandom(20_260_402);
        for (int run = 0; run < 5_000; run++) {
            PieceCost reel = new PieceCost(random.nextLong(0, 100_000), random.nextLong(1, 60_000));
            long used = 0;
            long charged = 0;
            while (used < reel.units()) {
                boolean comesBack = used > 0 && random.nextInt(4) == 0;
                long after = comesBack ? random.nextLong(0, used) : random.nextLong(used + 1, reel.units() + 2);
                long cost = reel.between(used, after);
                double exact = (double) reel.total() * (Math.min(after, reel.units()) - used) / reel.units();
                assertThat(Math.abs(cost - exact)).as("run %d of %s", run, reel).isLessThanOrEqualTo(1.0);
                charged += cost;
                used = after;
            }
            assertThat(charged).as("run %d of %s", run, reel).isEqualTo(reel.total());
        }
    }

    @Test
    void a_negative_price_and_a_reel_without_length_are_refused_by_name() {
        assertThatThrownBy(() -> new PieceCost(-1, 10)).hasMessageContaining("Total cost [-1]");
        assertThatThrownBy(() -> new PieceCost(1, 0)).hasMessageContaining("Bought units [0]");
    }
}
