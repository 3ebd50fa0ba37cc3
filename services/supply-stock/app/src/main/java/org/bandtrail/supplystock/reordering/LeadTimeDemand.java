package org.bandtrail.supplystock.reordering;

/**
 * What will be used between an order and its arrival.
 *
 * <pre>
 * E[D]   = E[d] E[L]
 * Var(D) = E[L] Var(d) + E[d]^2 Var(L)
 * </pre>
 *
 * d is the use of a day, L the lead time in days, D the demand of the lead time. Source: the variance of a random sum,
 * as in E. A. Silver, D. F. Pyke and D. J. Thomas, Inventory and Production Management in Supply Chains, 4th ed. 2017,
 * chapter 6 (citation from memory; worked examples beside the tests). Valid if the days' use is independent from day to
 * day and of the lead time; a season's start or end inside the lead time breaks that.
 *
 * @param mean E[D], in mm or pieces, 0 to 10^18
 * @param variance Var(D), in square units, 0 to 10^36
 */
public record LeadTimeDemand(double mean, double variance) {
    public LeadTimeDemand {
        InRange.checked("Mean demand of the lead time", mean, 0, 1e18);
        InRange.checked("Variance of the demand of the lead time", variance, 0, 1e36);
    }

    /** Carries the daily use over the lead time. */
    public static LeadTimeDemand of(DemandPerDay use, LeadTime lead) {
        return new LeadTimeDemand(
                use.mean() * lead.days(), lead.days() * use.variance() + use.mean() * use.mean() * lead.variance());
    }

    /** A demand given by its standard deviation, as textbooks do. */
    public static LeadTimeDemand ofSd(double mean, double sd) {
        return new LeadTimeDemand(mean, InRange.checked("Standard deviation of the demand", sd, 0, 1e18) * sd);
    }

    /** Standard deviation of D, in mm or pieces. */
    public double sd() {
        return Math.sqrt(variance);
    }
}
