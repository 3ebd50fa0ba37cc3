package org.bandtrail.supplystock.budgets;

/**
 * A budget beside what happened, in minor units of its currency.
 *
 * @param actualMinor charged to sites in the budget's months, of its grant, site and kind
 * @param committedMinor price of what is ordered and has not come, for its grant, site and kind, while its months last
 * @param leftMinor the amount less both; below zero if more was spent or ordered
 */
public record BudgetStanding(BudgetRow budget, long actualMinor, long committedMinor, long leftMinor) {
    static BudgetStanding of(BudgetRow budget, long actual, long committed) {
        return new BudgetStanding(budget, actual, committed, budget.amount().minor() - actual - committed);
    }
}
