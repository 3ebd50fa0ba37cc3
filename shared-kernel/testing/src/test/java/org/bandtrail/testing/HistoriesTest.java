package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The generator itself: it finds what is broken, shortens it, repeats it, and is fast enough to be used freely. */
class HistoriesTest {

    /** A reel in miniature: millimetres in the depot and on trees. */
    record Shelf(long received, long depot, long trees) {
        static final Shelf EMPTY = new Shelf(0, 0, 0);

        Shelf after(Step step) {
            return switch (step) {
                case Received(long mm) -> new Shelf(received + mm, depot + mm, trees);
                case Fitted(long mm) -> new Shelf(received, depot - mm, trees + mm);
                case TakenBack(long mm) -> new Shelf(received, depot + mm, trees - mm);
            };
        }

        /** Forgets to take what comes back off the tree. */
        Shelf afterBroken(Step step) {
            return step instanceof TakenBack(long mm) ? new Shelf(received, depot + mm, trees) : after(step);
        }

        void balances() {
            assertThat(depot + trees).as("depot and trees").isEqualTo(received);
        }
    }

    sealed interface Step {}

    record Received(long mm) implements Step {}

    record Fitted(long mm) implements Step {}

    record TakenBack(long mm) implements Step {}

    private static Step anyStep(RandomGenerator random) {
        long mm = 1 + random.nextInt(50_000);
        return switch (random.nextInt(3)) {
            case 0 -> new Received(mm);
            case 1 -> new Fitted(mm);
            default -> new TakenBack(mm);
        };
    }

    /** Takes back only what is on the trees. */
    private static Step possibleStep(RandomGenerator random, Shelf shelf) {
        Step step = anyStep(random);
        return step instanceof TakenBack && shelf.trees() > 0
                ? new TakenBack(1 + random.nextLong(shelf.trees()))
                : step instanceof TakenBack ? new Received(1) : step;
    }

    @Test
    void a_law_that_holds_is_checked_on_every_history() {
        long commands = Histories.check(
                1_000, 1, 20, HistoriesTest::anyStep, history -> end(history).balances());

        assertThat(commands).isBetween(9_000L, 12_000L);
    }

    @Test
    void a_broken_evolve_is_reported_with_its_seed_and_the_one_command_that_shows_it() {
        assertThatThrownBy(() -> Histories.check(10_000, 2, 20, HistoriesTest::anyStep, history -> {
                    Shelf shelf = Shelf.EMPTY;
                    for (Step step : history) {
                        shelf = shelf.afterBroken(step);
                    }
                    shelf.balances();
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("Seed 2 breaks the law with 1 of")
                .hasMessageContaining("   1  TakenBack[mm=")
                .hasMessageContaining("depot and trees")
                .hasMessageContaining("Repeat it with runs = 1, seed = 2, maxLength = 20");
    }

    @Test
    void a_broken_step_of_a_state_dependent_history_is_shortened_too() {
        List<Step> shown = new ArrayList<>();
        assertThatThrownBy(() -> Histories.check(
                        10_000,
                        1,
                        20,
                        () -> Shelf.EMPTY,
                        HistoriesTest::possibleStep,
                        (shelf, step) -> {
                            shown.add(step);
                            return shelf.afterBroken(step);
                        },
                        Shelf::balances))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("TakenBack")
                .hasMessageContaining("with 1 of");
        assertThat(shown).hasSizeGreaterThan(2);
    }

    @Test
    void only_the_commands_that_are_needed_together_remain() {
        List<Integer> history = List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13);

        assertThat(Shrinking.shortened(history, shorter -> shorter.containsAll(List.of(2, 7, 13))))
                .containsExactly(2, 7, 13);
        assertThat(Shrinking.shortened(history, shorter -> true)).isEmpty();
        assertThat(Shrinking.shortened(history, shorter -> shorter.size() == 13))
                .isEqualTo(history);
    }

    @Test
    void the_printed_seed_alone_repeats_the_history() {
        List<List<Step>> all = new ArrayList<>();
        Histories.check(50, 7, 20, HistoriesTest::anyStep, history -> all.add(List.copyOf(history)));
        List<List<Step>> one = new ArrayList<>();
        Histories.check(1, 7 + 31, 20, HistoriesTest::anyStep, history -> one.add(List.copyOf(history)));

        assertThat(one).containsExactly(all.get(31));
        assertThat(all).doesNotHaveDuplicates();
    }

    @Test
    void a_law_that_breaks_only_once_is_reported_as_not_deterministic() {
        int[] calls = {0};
        assertThatThrownBy(() -> Histories.check(
                        10,
                        3,
                        5,
                        HistoriesTest::anyStep,
                        history -> assertThat(++calls[0]).isNotEqualTo(4)))
                .hasMessageContaining("Seed 6 broke the law once and not when repeated");
    }

    @Test
    void a_shortened_history_fails_in_the_same_way_and_not_merely_somehow() {
        assertThatThrownBy(() -> Histories.check(
                        100,
                        1,
                        20,
                        () -> List.<Step>of(),
                        (random, done) -> done.isEmpty() ? new Received(1) : anyStep(random),
                        (done, step) -> {
                            if (done.isEmpty() && !(step instanceof Received)) {
                                throw new IllegalStateException("nothing was received yet");
                            }
                            return Stream.concat(done.stream(), Stream.of(step)).toList();
                        },
                        done -> assertThat(done).hasSizeLessThan(4)))
                .hasMessageContaining("with 4 of")
                .hasMessageContaining("   1  Received[")
                .hasCauseInstanceOf(AssertionError.class);
    }

    @Test
    void a_check_of_nothing_is_refused() {
        assertThatThrownBy(() -> Histories.check(0, 1, 20, HistoriesTest::anyStep, history -> {}))
                .hasMessageContaining("[0] histories");
        assertThatThrownBy(() -> Histories.check(1, 1, 0, HistoriesTest::anyStep, history -> {}))
                .hasMessageContaining("at most [0] commands");
    }

    /** The budget is ten times what a 2-core machine needed (0.6 s), so that a busy machine does not fail it. */
    @Test
    void a_hundred_thousand_histories_take_seconds() {
        long started = System.nanoTime();
        long commands =
                Histories.check(100_000, 1, 40, () -> Shelf.EMPTY, HistoriesTest::possibleStep, Shelf::after, shelf -> {
                    if (shelf.depot() + shelf.trees() != shelf.received()) {
                        throw new AssertionError(shelf);
                    }
                });

        assertThat(commands).isGreaterThan(1_900_000);
        assertThat((System.nanoTime() - started) / 1_000_000).as("milliseconds").isLessThan(6_000);
    }

    private static Shelf end(List<Step> history) {
        Shelf shelf = Shelf.EMPTY;
        for (Step step : history) {
            shelf = shelf.after(step);
        }
        return shelf;
    }
}
