package org.bandtrail.benchmark;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Runs two ways of doing the same amount of work turn by turn and compares them.
 *
 * @param turns counted turns, an odd number; one more is run first and thrown away
 */
record Interleaved(int turns) {

    /** A way of doing the work: returns how many things it did. */
    interface Way {
        long run() throws Exception;
    }

    /** Measures both ways, things per second for each turn. */
    Result compare(String what, Way raw, Way ours) throws Exception {
        rate(raw);
        rate(ours);
        double[] rawRates = new double[turns];
        double[] ourRates = new double[turns];
        for (int turn = 0; turn < turns; turn++) {
            boolean rawFirst = turn % 2 == 0;
            if (rawFirst) {
                rawRates[turn] = rate(raw);
            }
            ourRates[turn] = rate(ours);
            if (!rawFirst) {
                rawRates[turn] = rate(raw);
            }
        }
        return new Result(what, rawRates, ourRates);
    }

    private static double rate(Way way) throws Exception {
        long begin = System.nanoTime();
        long done = way.run();
        return done * 1e9 / (System.nanoTime() - begin);
    }

    /**
     * @param raw things per second of the raw way, by turn
     * @param ours things per second of our way, by turn
     */
    record Result(String what, double[] raw, double[] ours) {

        double[] ratios() {
            return IntStream.range(0, raw.length)
                    .mapToDouble(i -> ours[i] / raw[i])
                    .toArray();
        }

        /** One line of the table in DEVELOPERS.md. */
        String row() {
            double[] ratios = ratios();
            return String.format(
                    Locale.ROOT,
                    "| %s | %,.0f | %,.0f | %.2f | %.2f - %.2f |",
                    what,
                    median(raw),
                    median(ours),
                    median(ratios),
                    Arrays.stream(ratios).min().orElseThrow(),
                    Arrays.stream(ratios).max().orElseThrow());
        }

        static double median(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return sorted[sorted.length / 2];
        }
    }
}
