package org.bandtrail.supplystock.counts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.counts.CountSamples.*;

import java.util.Objects;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CountTest {
    private static final SheetLine R1 = reel("R-1", BIN, 50_000);
    private static final SheetLine R2 = reel("R-2", BIN, 20_000);
    private static final SheetLine PINS = pins("B-1", BIN, 400);

    @Nested
    class Counted {
        @Test
        void what_agrees_within_the_tolerance_goes_straight_to_review() {
            Count count = after(open(BIN, R1, PINS), enter(R1, 49_750, WREN), enter(PINS, 395, WREN), finish(false));

            assertThat(count.stage()).isEqualTo(Count.Stage.REVIEW);
        }

        @Test
        void a_millimetre_beyond_the_tolerance_is_counted_again() {
            // 5 per mille of 50 m are 250 mm.
            Count count = after(open(BIN, R1), enter(R1, 49_749, WREN), finish(false));

            assertThat(count.stage()).isEqualTo(Count.Stage.COUNTING);
            assertThat(count.again()).containsExactly(R1.key());
        }

        @Test
        void a_second_figure_in_the_same_round_replaces_the_first() {
            Count count = after(open(BIN, R1), enter(R1, 5_000, WREN), enter(R1, 50_000, WREN), finish(false));

            assertThat(count.stage()).isEqualTo(Count.Stage.REVIEW);
            assertThat(Objects.requireNonNull(count.lines().get(R1.key())).difference())
                    .isZero();
        }

        @Test
        void a_line_without_a_figure_holds_the_round_up_unless_it_is_not_there() {
            Count count = after(open(BIN, R1, R2), enter(R1, 50_000, WREN));

            assertThatExceptionOfType(CountRefused.NotAllCounted.class)
                    .isThrownBy(() -> count.decide(finish(false)))
                    .withMessageContaining("R-2");
            assertThat(next(count, finish(true)).again()).containsExactly(R2.key());
        }

        @Test
        void what_is_not_on_the_sheet_can_be_entered_and_is_counted_again() {
            SheetLine found = reel("R-9", BIN, 0, Place.parse("crew:P-07"), 12_000);
            Count count = after(open(BIN, R1), enter(R1, 50_000, WREN), enter(found, 11_900, WREN), finish(false));

            assertThat(count.again()).containsExactly(found.key());
            assertThat(Objects.requireNonNull(count.lines().get(found.key())).difference())
                    .isEqualTo(11_900);
        }

        @Test
        void another_place_a_figure_below_zero_and_an_unclear_bin_are_refused() {
            Count bin = after(open(BIN, R1));
            Count depot = after(open(NORTH, pins("B-1", BIN, 100), pins("B-1", OTHER_BIN, 300)));

            assertThatExceptionOfType(CountRefused.OutsideTheCount.class)
                    .isThrownBy(() -> bin.decide(enter(R1, OTHER_BIN, 1, false, WREN)));
            assertThatExceptionOfType(CountRefused.NoFigure.class).isThrownBy(() -> bin.decide(enter(R1, -1, WREN)));
            assertThatExceptionOfType(CountRefused.WhichBin.class)
                    .isThrownBy(() -> depot.decide(enter(PINS, 100, WREN)));
            assertThat(depot.decide(enter(PINS, OTHER_BIN, 300, false, WREN))).hasSize(1);
        }

        @Test
        void only_depots_and_bins_are_counted_and_none_twice_under_one_identity() {
            assertThatExceptionOfType(CountRefused.NotCountable.class)
                    .isThrownBy(() -> after(open(Place.parse("crew:P-07"))));
            assertThatExceptionOfType(CountRefused.CountOpenAlready.class)
                    .isThrownBy(() -> after(open(BIN), open(BIN)));
        }
    }

    @Nested
    class CountedAgain {
        @Test
        void by_the_same_person_only_when_nobody_else_is_there() {
            Count count = after(open(BIN, R1), enter(R1, 48_000, WREN), finish(false));

            assertThatExceptionOfType(CountRefused.SamePersonAgain.class)
                    .isThrownBy(() -> count.decide(enter(R1, 48_000, WREN)));
            assertThat(count.decide(enter(R1, null, 48_000, true, WREN))).hasSize(1);
            assertThat(count.decide(enter(R1, 48_000, FINN))).hasSize(1);
        }

        @Test
        void two_counts_that_agree_settle_it_and_two_that_do_not_ask_for_a_third() {
            Count once = after(open(BIN, R1), enter(R1, 48_000, WREN), finish(false));

            assertThat(next(next(once, enter(R1, 48_100, FINN)), finish(false)).stage())
                    .isEqualTo(Count.Stage.REVIEW);
            Count unclear = next(next(once, enter(R1, 46_000, FINN)), finish(false));
            assertThat(unclear.round()).isEqualTo(3);
            assertThat(next(next(unclear, enter(R1, 48_000, LEAD)), finish(false))
                            .stage())
                    .isEqualTo(Count.Stage.REVIEW);
        }

        @Test
        void only_what_differed() {
            Count count = after(open(BIN, R1, R2), enter(R1, 48_000, WREN), enter(R2, 20_000, WREN), finish(false));

            assertThatExceptionOfType(CountRefused.NotToBeRecounted.class)
                    .isThrownBy(() -> count.decide(enter(R2, 19_000, FINN)));
            assertThatExceptionOfType(CountRefused.NotAllCounted.class).isThrownBy(() -> count.decide(finish(true)));
        }
    }

    @Nested
    class Approved {
        @Test
        void nothing_is_posted_without_a_reason_for_each_difference() {
            Count count = after(open(BIN, R1), enter(R1, 49_900, WREN), finish(false));

            assertThatExceptionOfType(CountRefused.ReasonsMissing.class)
                    .isThrownBy(() -> count.decide(approve(WREN)))
                    .withMessageContaining("R-1");
            // 100 mm of 50 m for 18.00 are worth 4 cents, below the threshold: the counter may approve.
            assertThat(posted(next(count, because(R1, "torn end")), WREN))
                    .containsExactly("ADJUSTED R-1 null->depot:NORTH/A-03 -100");
        }

        @Test
        void above_the_value_somebody_approves_who_did_not_count() {
            // 13,888 mm of 50 m for 18.00 are worth 499.97, rounded half up 500 minor units: just the threshold.
            Count count = after(
                    open(BIN, R1),
                    enter(R1, 36_112, WREN),
                    finish(false),
                    enter(R1, 36_112, FINN),
                    finish(false),
                    because(R1, "not found"));

            assertThatExceptionOfType(CountRefused.SecondPersonNeeded.class)
                    .isThrownBy(() -> count.decide(approve(WREN)));
            assertThatExceptionOfType(CountRefused.SecondPersonNeeded.class)
                    .isThrownBy(() -> count.decide(approve(FINN)));
            assertThat(posted(count, LEAD)).hasSize(1);
        }

        @Test
        void what_is_too_much_does_not_make_good_what_lacks_when_its_worth_is_weighed() {
            // Minus 10 m is worth 3.60 and plus 10 m as much: 7.20 together, not nothing.
            Count count = after(
                    open(BIN, R1, R2),
                    enter(R1, 40_000, WREN),
                    enter(R2, 30_000, WREN),
                    finish(false),
                    enter(R1, 40_000, FINN),
                    enter(R2, 30_000, FINN),
                    finish(false),
                    because(R1, "labels mixed up"),
                    because(R2, "labels mixed up"));

            assertThatExceptionOfType(CountRefused.SecondPersonNeeded.class)
                    .isThrownBy(() -> count.decide(approve(WREN)))
                    .withMessageContaining("720");
        }

        @Test
        void an_approved_or_cancelled_count_takes_nothing_more() {
            Count approved = after(open(BIN, R1), enter(R1, 50_000, WREN), finish(false), approve(WREN));
            Count cancelled = after(open(BIN, R1), new CountCommand.Cancel(COUNT, "rain", LEAD, NOW));

            assertThatExceptionOfType(CountRefused.NotAtThisStep.class)
                    .isThrownBy(() -> approved.decide(approve(WREN)));
            assertThatExceptionOfType(CountRefused.NotAtThisStep.class)
                    .isThrownBy(() -> approved.decide(new CountCommand.Cancel(COUNT, "late", LEAD, NOW)));
            assertThatExceptionOfType(CountRefused.NotAtThisStep.class)
                    .isThrownBy(() -> cancelled.decide(enter(R1, 1, WREN)));
            assertThatExceptionOfType(CountRefused.ReasonsMissing.class)
                    .isThrownBy(() -> after(open(BIN)).decide(new CountCommand.Cancel(COUNT, " ", LEAD, NOW)));
        }
    }
}
