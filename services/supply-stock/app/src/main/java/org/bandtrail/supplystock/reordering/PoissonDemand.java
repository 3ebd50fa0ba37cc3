package org.bandtrail.supplystock.reordering;

import org.hipparchus.special.Gamma;

/**
 * Poisson demand of the lead time: pieces used one at a time and independently.
 *
 * <pre>
 * P(X = k)  = m^k e^-m / k!
 * P(X &lt;= k) = Q(k + 1, m)                                    (regularised incomplete gamma, upper)
 * E[(X - s)+] = m P(X &gt;= s) - s P(X &gt; s)
 * </pre>
 *
 * Source: N. L. Johnson, A. W. Kemp and S. Kotz, Univariate Discrete Distributions, 3rd ed. 2005, chapter 4 (from
 * memory; checked against SciPy's poisson). Valid for m up to 10^6 pieces; its variance is its mean.
 *
 * @param mean m, pieces, 0 to 10^6
 */
public record PoissonDemand(double mean) implements CountedDemand {
    public PoissonDemand {
        InRange.checked("Mean pieces of the lead time", mean, 0, 1e6);
    }

    @Override
    public double probability(long k) {
        if (k < 0 || mean == 0) {
            return k == 0 ? 1 : 0;
        }
        return Math.exp(k * Math.log(mean) - mean - Gamma.logGamma(k + 1.0));
    }

    @Override
    public double atMost(long k) {
        if (k < 0) {
            return 0;
        }
        return mean == 0 ? 1 : Gamma.regularizedGammaQ(k + 1.0, mean);
    }

    @Override
    public double expectedShortage(long stock) {
        InRange.checked("Stock (pieces)", stock, 0, 1e12);
        if (stock == 0 || mean == 0) {
            return mean;
        }
        return mean * Gamma.regularizedGammaP(stock, mean) - stock * Gamma.regularizedGammaP(stock + 1.0, mean);
    }

    @Override
    public String distribution() {
        return "Poisson";
    }
}
