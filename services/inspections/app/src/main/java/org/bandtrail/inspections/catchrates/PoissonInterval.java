package org.bandtrail.inspections.catchrates;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Exact confidence interval of the mean of a Poisson count x: from chi2(a/2, 2x) / 2 to chi2(1 - a/2, 2x + 2) / 2,
 * where chi2(p, k) is the p quantile of the chi-squared distribution with k degrees of freedom and a is 1 minus the
 * confidence. Source: F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28 (1936) 437-442. Valid for
 * counts from one Poisson process; insects on trees are clumped, then the interval is too narrow.
 *
 * @param low lower end, 0 for a count of 0
 * @param high upper end
 */
public record PoissonInterval(double low, double high) {

    /**
     * The interval for a count.
     *
     * @param count 0 to 10^9
     * @param confidence between 0 and 1, such as 0.95
     * @throws IllegalArgumentException naming the value out of range
     */
    public static PoissonInterval of(long count, double confidence) {
        if (count < 0 || count > 1_000_000_000) {
            throw new IllegalArgumentException("Count [%d] is not between 0 and 10^9.".formatted(count));
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("Confidence [%s] is not between 0 and 1.".formatted(confidence));
        }
        double tail = (1 - confidence) / 2;
        double low = count == 0 ? 0 : quantile(tail, 2.0 * count) / 2;
        return new PoissonInterval(low, quantile(1 - tail, 2.0 * count + 2) / 2);
    }

    private static double quantile(double probability, double degreesOfFreedom) {
        return new ChiSquaredDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
    }
}
