package org.bandtrail.supplystock.budgets;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask about a budget. */
public sealed interface BudgetCommand {

    /** Wish: set a budget. Refused if its identity is taken or the plan makes no sense. */
    record SetUp(@TargetAggregateIdentifier BudgetId budgetId, BudgetPlan plan, PersonId by, Occurred occurred)
            implements BudgetCommand {}

    /** Wish: another amount from now on, with a reason. Refused in another currency. */
    record ChangeAmount(
            @TargetAggregateIdentifier BudgetId budgetId, Money amount, String reason, PersonId by, Occurred occurred)
            implements BudgetCommand {}

    /** Wish: let it count no longer, with a reason. */
    record Drop(@TargetAggregateIdentifier BudgetId budgetId, String reason, PersonId by, Occurred occurred)
            implements BudgetCommand {}
}
