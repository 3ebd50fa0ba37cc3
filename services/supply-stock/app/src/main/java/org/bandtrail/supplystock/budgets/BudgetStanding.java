package org.bandtrail.supplystock.budgets;

import java.util.EnumMap;
import java.util.Map;
import org.bandtrail.supplystock.spend.Outcome;

/**
 * A budget beside what happened, in minor units of its currency; all in its months, of its grant, site and kind.
 *
 * @param usedMinor used at sites
 * @param scrappedMinor spoilt on the job at sites
 * @param missingMinor missing and written off
 * @param writtenDownMinor stock written down
 * @param actualMinor spent: those of the four that the budget counts
 * @param committedMinor price of what is ordered and has not come, while its months last
 * @param leftMinor the amount less spent and committed; below zero if more was spent or ordered
 */
public record BudgetStanding(
        BudgetRow budget,
        long usedMinor,
        long scrappedMinor,
        long missingMinor,
        long writtenDownMinor,
        long actualMinor,
        long committedMinor,
        long leftMinor) {
    /** @param sums minor units of each outcome; none is zero */
    static BudgetStanding of(BudgetRow budget, Map<Outcome, Long> sums, long committed) {
        EnumMap<Outcome, Long> all = new EnumMap<>(Outcome.class);
        all.putAll(sums);
        long actual = all.entrySet().stream()
                .filter(each -> budget.counts().counts(each.getKey()))
                .mapToLong(Map.Entry::getValue)
                .sum();
        return new BudgetStanding(
                budget,
                all.getOrDefault(Outcome.USED, 0L),
                all.getOrDefault(Outcome.SCRAPPED, 0L),
                all.getOrDefault(Outcome.MISSING, 0L),
                all.getOrDefault(Outcome.WRITTEN_DOWN, 0L),
                actual,
                committed,
                budget.amount().minor() - actual - committed);
    }
}
