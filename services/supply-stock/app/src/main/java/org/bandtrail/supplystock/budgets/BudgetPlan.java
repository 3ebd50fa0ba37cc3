package org.bandtrail.supplystock.budgets;

import java.time.YearMonth;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.grants.GrantId;
import org.jspecify.annotations.Nullable;

/**
 * What a budget is for.
 *
 * @param name what people call it
 * @param grantId of which grant, null for whoever pays
 * @param siteId at which site, null for all
 * @param kind on which kind of material, null for all
 * @param from first month
 * @param through last month, not before {@code from}
 * @param amount what may be spent, above zero
 * @param counts what counts as spent
 */
public record BudgetPlan(
        String name,
        @Nullable GrantId grantId,
        @Nullable SiteId siteId,
        @Nullable MaterialKind kind,
        YearMonth from,
        YearMonth through,
        Money amount,
        Counts counts) {
    /** The same for another amount. */
    BudgetPlan of(Money other) {
        return new BudgetPlan(name, grantId, siteId, kind, from, through, other, counts);
    }
}
