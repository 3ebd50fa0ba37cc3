package org.bandtrail.supplystock.costs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Freight split over the lines of a delivery. The two examples were computed by hand, independently of the code. */
class LargestRemainderTest {

    @Test
    void freight_of_100_over_lines_of_300_300_and_400_is_30_30_and_40() {
        assertThat(LargestRemainder.split(100_00, List.of(300L, 300L, 400L))).containsExactly(30_00L, 30_00L, 40_00L);
    }

    @Test
    void the_cent_that_does_not_divide_goes_to_the_earlier_line() {
        assertThat(LargestRemainder.split(100_00, List.of(1L, 1L, 1L))).containsExactly(33_34L, 33_33L, 33_33L);
    }

    @Test
    void a_credit_note_mirrors_its_invoice() {
        assertThat(LargestRemainder.split(-100_00, List.of(1L, 1L, 1L))).containsExactly(-33_34L, -33_33L, -33_33L);
    }

    @Test
    void a_line_of_weight_nought_gets_nothing() {
        assertThat(LargestRemainder.split(7, List.of(0L, 1L, 0L, 1L))).containsExactly(0L, 4L, 0L, 3L);
    }

    @Test
    void the_largest_amounts_and_weights_do_not_overflow() {
        assertThat(LargestRemainder.split(1_000_000_000_000_000L, List.of(Long.MAX_VALUE, Long.MAX_VALUE)))
                .containsExactly(500_000_000_000_000L, 500_000_000_000_000L);
    }

    @Test
    void whatever_is_split_the_parts_add_up_and_stay_within_one_unit_of_the_quota() {
        SplittableRandom random = new SplittableRandom(20_260_401);
        for (int run = 0; run < 20_000; run++) {
            long amount = random.nextLong(-1_000_000, 1_000_000);
            List<Long> weights = LongStream.generate(() -> random.nextLong(0, 1_000))
                    .limit(random.nextInt(1, 12))
                    .boxed()
                    .toList();
            long sum = weights.stream().mapToLong(Long::longValue).sum();
            if (sum == 0) {
                continue;
            }
            List<Long> parts = LargestRemainder.split(amount, weights);
            assertThat(parts.stream().mapToLong(Long::longValue).sum())
                    .as("run %d: %d over %s", run, amount, weights)
                    .isEqualTo(amount);
            for (int part = 0; part < parts.size(); part++) {
                assertThat(Math.abs(parts.get(part) * sum - amount * weights.get(part)))
                        .as("run %d: part %d of %s", run, part, weights)
                        .isLessThan(sum);
            }
        }
    }

    @Test
    void weights_that_are_negative_absent_or_all_nought_are_refused_by_name() {
        assertThatThrownBy(() -> LargestRemainder.split(100, List.of(3L, -1L)))
                .hasMessage("Weight 2 of 2 is [-1]. A weight is 0 or more.");
        assertThatThrownBy(() -> LargestRemainder.split(100, List.of())).hasMessageContaining("Weights []");
        assertThatThrownBy(() -> LargestRemainder.split(100, List.of(0L, 0L))).hasMessageContaining("add up to 0");
    }
}
