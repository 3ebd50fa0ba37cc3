package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * Numbers in an order that looks like chance and follows from the seed alone (SplitMix64: Steele, Lea and Flood 2014,
 * doi:10.1145/2660193.2660195). Written out here, so that the same seed gives the same plan on every Java.
 */
final class Chance {
    private long state;

    Chance(long seed) {
        this.state = seed;
    }

    /** A number from 0 to below {@code bound}. */
    int below(int bound) {
        state += 0x9E3779B97F4A7C15L;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        mixed ^= mixed >>> 31;
        return (int) (((mixed >>> 32) * bound) >>> 32);
    }

    /** True in {@code percent} of a hundred. */
    boolean percent(int percent) {
        return below(100) < percent;
    }

    /** Shuffles the first {@code size} numbers. */
    void shuffle(int[] numbers, int size) {
        for (int i = size - 1; i > 0; i--) {
            int j = below(i + 1);
            int kept = numbers[i];
            numbers[i] = numbers[j];
            numbers[j] = kept;
        }
    }
}
