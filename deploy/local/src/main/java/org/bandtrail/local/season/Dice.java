package org.bandtrail.local.season;

/**
 * A seeded source of chance for the demo season: the same seed gives the same season on every machine. The generator is
 * SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"); {@link StrictMath} keeps
 * the floating-point steps identical everywhere.
 */
final class Dice {
    private static final double LARGE_MEAN = 30;
    private long state;

    Dice(long seed) {
        this.state = seed;
    }

    private long next() {
        state += 0x9E3779B97F4A7C15L;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    /** A number from 0 up to, not including, 1. */
    double fraction() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    /** A whole number from the first to the last, both included. */
    int between(int first, int last) {
        return first + (int) (fraction() * (last - first + 1));
    }

    /** True in this many of a thousand throws. */
    boolean chance(int permille) {
        return fraction() * 1000 < permille;
    }

    /** A normal deviate (Box and Muller 1958). */
    double normal(double mean, double standardDeviation) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - fraction()));
        return mean + standardDeviation * radius * StrictMath.cos(2 * StrictMath.PI * fraction());
    }

    /** A gamma deviate with this shape and mean; shapes below 1 by Johnk's boost of Marsaglia and Tsang (2000). */
    double gamma(double shape, double mean) {
        if (shape < 1) {
            return gamma(shape + 1, mean * (shape + 1) / shape) * StrictMath.pow(1 - fraction(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / StrictMath.sqrt(9 * d);
        while (true) {
            double x = normal(0, 1);
            double v = StrictMath.pow(1 + c * x, 3);
            if (v > 0 && StrictMath.log(1 - fraction()) < 0.5 * x * x + d - d * v + d * StrictMath.log(v)) {
                return d * v * mean / shape;
            }
        }
    }

    /** An overdispersed count: negative binomial with this mean and dispersion k, variance mean + mean squared / k. */
    int count(double mean, double k) {
        return mean <= 0 ? 0 : poisson(gamma(k, mean));
    }

    private int poisson(double mean) {
        if (mean > LARGE_MEAN) {
            return Math.max(0, (int) StrictMath.rint(normal(mean, StrictMath.sqrt(mean))));
        }
        double limit = StrictMath.exp(-mean);
        int count = -1;
        double product = 1;
        do {
            product *= 1 - fraction();
            count++;
        } while (product > limit);
        return count;
    }
}
