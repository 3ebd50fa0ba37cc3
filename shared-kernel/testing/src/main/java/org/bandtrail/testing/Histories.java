package org.bandtrail.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Laws checked over random histories of commands. Run {@code r} of a check uses seed {@code seed + r}, so one broken
 * history is repeated alone with {@code runs = 1} and the printed seed. A broken history is shortened first: commands
 * whose removal still breaks the law in the same way are left out, see {@link Shrinking}.
 *
 * <p>A law is broken when it, or the step before it, throws anything at all. Laws throw {@link AssertionError} (AssertJ
 * does); a step that refuses a wish catches the refusal itself and returns the state unchanged.
 */
public final class Histories {

    private Histories() {}

    /**
     * Checks a law of a whole history.
     *
     * @param runs number of histories, at least 1
     * @param seed of the first history; the following ones use the next numbers
     * @param maxLength histories have 1 to this many commands
     * @param anyCommand makes a command from the given randomness and nothing else
     * @param law throws if the history breaks it
     * @return the number of commands over all histories, so that a test can say it did not check nothing
     * @throws AssertionError with the seed and the shortened history
     */
    public static <C> long check(
            int runs, long seed, int maxLength, Function<RandomGenerator, C> anyCommand, Consumer<List<C>> law) {
        return each(runs, seed, maxLength, (random, length) -> {
            List<C> history = new ArrayList<>(length);
            for (int i = 0; i < length; i++) {
                history.add(anyCommand.apply(random));
            }
            return new Attempt<>(
                    history, breakOf(() -> law.accept(history)), shorter -> breakOf(() -> law.accept(shorter)));
        });
    }

    /**
     * Checks a law after every step of histories whose commands depend on the state reached so far, for example a
     * return of what was handed out before.
     *
     * @param runs number of histories, at least 1
     * @param seed of the first history; the following ones use the next numbers
     * @param maxLength histories have 1 to this many commands
     * @param start makes the state before the first command; it may be mutable, each history gets its own
     * @param anyCommand makes a command from the given randomness and the state
     * @param step the state after the command
     * @param law throws if a state breaks it
     * @return the number of commands over all histories, so that a test can say it did not check nothing
     * @throws AssertionError with the seed and the shortened history
     */
    public static <S, C> long check(
            int runs,
            long seed,
            int maxLength,
            Supplier<S> start,
            BiFunction<RandomGenerator, S, C> anyCommand,
            BiFunction<S, C, S> step,
            Consumer<S> law) {
        return each(runs, seed, maxLength, (random, length) -> {
            List<C> history = new ArrayList<>(length);
            Throwable broken = breakOf(() -> {
                S state = start.get();
                for (int i = 0; i < length; i++) {
                    C command = anyCommand.apply(random, state);
                    history.add(command);
                    state = step.apply(state, command);
                    law.accept(state);
                }
            });
            return new Attempt<>(history, broken, shorter -> breakOf(() -> replay(shorter, start, step, law)));
        });
    }

    private static <S, C> void replay(List<C> history, Supplier<S> start, BiFunction<S, C, S> step, Consumer<S> law) {
        S state = start.get();
        for (C command : history) {
            state = step.apply(state, command);
            law.accept(state);
        }
    }

    private static <C> long each(
            int runs, long seed, int maxLength, BiFunction<RandomGenerator, Integer, Attempt<C>> run) {
        if (runs < 1 || maxLength < 1) {
            throw new IllegalArgumentException(
                    "A check of [%d] histories of at most [%d] commands checks nothing. Use 1 or more of each."
                            .formatted(runs, maxLength));
        }
        long commands = 0;
        for (int r = 0; r < runs; r++) {
            RandomGenerator random = new SplittableRandom(seed + r);
            Attempt<C> attempt = run.apply(random, 1 + random.nextInt(maxLength));
            commands += attempt.history().size();
            if (attempt.broken() != null) {
                throw Shrinking.report(seed + r, maxLength, attempt.history(), attempt.broken(), attempt.again());
            }
        }
        return commands;
    }

    private static @Nullable Throwable breakOf(Runnable work) {
        try {
            work.run();
            return null;
        } catch (RuntimeException | Error broken) {
            return broken;
        }
    }

    /** One history, what broke in it (null: nothing), and how to try a shorter one. */
    private record Attempt<C>(
            List<C> history, @Nullable Throwable broken, Function<List<C>, @Nullable Throwable> again) {}
}
