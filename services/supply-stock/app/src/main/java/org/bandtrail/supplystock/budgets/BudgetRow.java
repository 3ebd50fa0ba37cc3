package org.bandtrail.supplystock.budgets;

import java.time.Instant;
import java.time.YearMonth;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One budget as people see it.
 *
 * @param grantId null for whoever pays
 * @param siteId null for all sites
 * @param kind null for all kinds of material
 * @param counts what counts as spent
 * @param dropped why it no longer counts, null while it does
 */
public record BudgetRow(
        String budgetId,
        String name,
        @Nullable String grantId,
        @Nullable String siteId,
        @Nullable MaterialKind kind,
        YearMonth from,
        YearMonth through,
        Money amount,
        Counts counts,
        @Nullable String dropped) {

    /** What happened to a budget; the amount is null when it was dropped, the reason when it was set. */
    public record Happened(
            String what, @Nullable Long minor, @Nullable String reason, String by, Instant at) {}
}
