package org.bandtrail.supplystock.reordering;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The wanted probability that nothing runs out between an order and its arrival (type 1 service). It is not the share
 * of the demand that is served: see {@link FillRate}.
 *
 * <p>z = &Phi;<sup>-1</sup>(level), the standard normal quantile, exact to double precision; tables round 1.645 to
 * 1.65, we do not. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.1 (normal distribution).
 *
 * @param permille 500 to 999; below one half a "safety" stock would be negative
 */
public record CycleServiceLevel(int permille) {
    private static final NormalDistribution STANDARD = new NormalDistribution();

    public CycleServiceLevel {
        InRange.checked("Service level (permille)", permille, 500, 999);
    }

    /** The level as a probability, 0.5 to 0.999. */
    public double probability() {
        return permille / 1000.0;
    }

    /** How many standard deviations above the mean: 0 at 500 permille, 3.09 at 999. */
    public double z() {
        return permille == 500 ? 0 : STANDARD.inverseCumulativeProbability(probability());
    }
}
