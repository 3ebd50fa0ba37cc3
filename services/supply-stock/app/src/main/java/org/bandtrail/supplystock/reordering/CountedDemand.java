package org.bandtrail.supplystock.reordering;

/**
 * Demand of the lead time in pieces, where a normal curve is wrong: few pieces, many days without use, never below
 * nought. Negative binomial where the variance exceeds the mean (the usual case: a crew takes a boxful or nothing),
 * Poisson otherwise. A variance below the mean is also treated as Poisson, which errs on the safe side; what has mean
 * nought is nought.
 */
public sealed interface CountedDemand permits NegativeBinomialDemand, PoissonDemand {

    /** A variance so little above the mean that the negative binomial is a Poisson to every printed digit. */
    double HARDLY_MORE_VARIABLE = 1 + 1e-6;

    /**
     * Chooses the distribution that has this mean and variance, as nearly as it can.
     *
     * @throws IllegalArgumentException if the mean is beyond 10^6 pieces; use the normal formula there
     */
    static CountedDemand of(LeadTimeDemand demand) {
        return demand.mean() > 0 && demand.variance() > demand.mean() * HARDLY_MORE_VARIABLE
                ? new NegativeBinomialDemand(demand.mean(), demand.variance())
                : new PoissonDemand(demand.mean());
    }

    /** P(X = k). */
    double probability(long k);

    /** P(X &lt;= k); 0 below nought. */
    double atMost(long k);

    /** E[(X - stock)+]: how many pieces a cycle is short of on average when it starts with this stock, 0 or more. */
    double expectedShortage(long stock);

    /** The name of the distribution, for the formula shown to people. */
    String distribution();

    /** The reorder point: the smallest number of pieces that suffices with the probability of the level. */
    default long reorderPoint(CycleServiceLevel level) {
        double wanted = level.probability();
        long high = 1;
        while (atMost(high) < wanted) {
            high *= 2;
        }
        long low = -1;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (atMost(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
