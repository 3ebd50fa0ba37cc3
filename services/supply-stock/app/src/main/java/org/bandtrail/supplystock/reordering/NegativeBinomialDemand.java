package org.bandtrail.supplystock.reordering;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Negative binomial demand of the lead time, fitted by its mean m and variance v.
 *
 * <pre>
 * r = m^2 / (v - m),  p = m / v
 * P(X = k)  = Gamma(k + r) / (k! Gamma(r)) p^r (1 - p)^k
 * P(X &lt;= k) = I_p(r, k + 1)                                  (regularised incomplete beta)
 * E[(X - s)+] = m P'(X &gt;= s) - s P(X &gt; s),  P' with r + 1 in place of r
 * </pre>
 *
 * Source: N. L. Johnson, A. W. Kemp and S. Kotz, Univariate Discrete Distributions, 3rd ed. 2005, chapter 5 (from
 * memory; checked against SciPy's nbinom). Valid for m up to 10^6 pieces and v above m; r need not be whole.
 *
 * @param mean m, pieces, above 0 to 10^6
 * @param variance v, above m
 */
public record NegativeBinomialDemand(double mean, double variance) implements CountedDemand {
    public NegativeBinomialDemand {
        InRange.checked("Mean pieces of the lead time", mean, Double.MIN_NORMAL, 1e6);
        InRange.checked("Variance of the pieces (more than the mean)", variance, mean * HARDLY_MORE_VARIABLE, 1e18);
    }

    /** r, the shape: the smaller, the more bunched the demand. */
    public double shape() {
        return mean * mean / (variance - mean);
    }

    /** p, between 0 and 1. */
    public double p() {
        return mean / variance;
    }

    @Override
    public double probability(long k) {
        if (k < 0) {
            return 0;
        }
        double r = shape();
        double logWays = Gamma.logGamma(k + r) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(r);
        return Math.exp(logWays + r * Math.log(p()) + k * Math.log1p(-p()));
    }

    @Override
    public double atMost(long k) {
        return k < 0 ? 0 : Beta.regularizedBeta(p(), shape(), k + 1.0);
    }

    @Override
    public double expectedShortage(long stock) {
        InRange.checked("Stock (pieces)", stock, 0, 1e12);
        if (stock == 0) {
            return mean;
        }
        // Both tails as incomplete betas of 1 - p: taken from 1 they would lose their digits.
        double largerShapeAtLeast = Beta.regularizedBeta(1 - p(), stock, shape() + 1);
        double above = Beta.regularizedBeta(1 - p(), stock + 1.0, shape());
        return mean * largerShapeAtLeast - stock * above;
    }

    @Override
    public String distribution() {
        return "negative binomial";
    }
}
