package org.bandtrail.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Makes a broken history short enough to read: it leaves out runs of commands, half the history first, then ever
 * smaller runs down to single commands, as long as the rest breaks in the same way. Source of the method: A. Zeller, R.
 * Hildebrandt, Simplifying and isolating failure-inducing input, IEEE Trans. Softw. Eng. 28 (2002) 183-200, without its
 * test of complements only. "In the same way" means the same class of throwable, so that a shortened history that is
 * merely impossible is not mistaken for the failure.
 */
final class Shrinking {

    private Shrinking() {}

    /** Shortens the history and describes the failure; the cause is what the shortened history threw. */
    static <C> AssertionError report(
            long seed, int maxLength, List<C> history, Throwable broken, Function<List<C>, @Nullable Throwable> again) {
        if (!sameWay(broken, again.apply(history))) {
            return new AssertionError(
                    "Seed %d broke the law once and not when repeated: step or law is not deterministic. History:%s"
                            .formatted(seed, lines(history)),
                    broken);
        }
        List<C> shortened = shortened(history, shorter -> sameWay(broken, again.apply(shorter)));
        Throwable cause = again.apply(shortened);
        return new AssertionError(
                ("Seed %d breaks the law with %d of %d commands:%s%nbecause: %s%n"
                                + "Repeat it with runs = 1, seed = %d, maxLength = %d.")
                        .formatted(
                                seed,
                                shortened.size(),
                                history.size(),
                                lines(shortened),
                                cause == null ? broken : cause,
                                seed,
                                maxLength),
                cause == null ? broken : cause);
    }

    /** The history without every command that is not needed for {@code breaks} to stay true. */
    static <C> List<C> shortened(List<C> history, Function<List<C>, Boolean> breaks) {
        List<C> kept = List.copyOf(history);
        int run = Math.max(1, kept.size() / 2);
        while (true) {
            List<C> before = kept;
            for (int from = kept.size() - run; from > -run; from -= run) {
                List<C> shorter = without(kept, Math.max(0, from), from + run);
                if (breaks.apply(shorter)) {
                    kept = shorter;
                }
            }
            if (run == 1 && kept.size() == before.size()) {
                return kept;
            }
            run = Math.max(1, run / 2);
        }
    }

    private static <C> List<C> without(List<C> history, int from, int to) {
        List<C> shorter = new ArrayList<>(history.subList(0, from));
        shorter.addAll(history.subList(to, history.size()));
        return shorter;
    }

    private static boolean sameWay(Throwable expected, @Nullable Throwable actual) {
        return actual != null && expected.getClass() == actual.getClass();
    }

    private static <C> String lines(List<C> history) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < history.size(); i++) {
            text.append("%n  %2d  %s".formatted(i + 1, history.get(i)));
        }
        return text.toString();
    }
}
