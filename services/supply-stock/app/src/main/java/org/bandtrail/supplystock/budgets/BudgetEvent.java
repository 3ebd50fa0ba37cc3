package org.bandtrail.supplystock.budgets;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a budget. */
public sealed interface BudgetEvent {
    /** The budget. */
    BudgetId budgetId();

    /** Set with its plan. */
    @StoredAs("budget.set")
    @Revision("2")
    record Planned(BudgetId budgetId, BudgetPlan plan, PersonId by, Occurred occurred) implements BudgetEvent {}

    /** Its amount is another from now on. */
    @StoredAs("budget.amount-changed")
    @Revision("1")
    record AmountChanged(BudgetId budgetId, Money amount, String reason, PersonId by, Occurred occurred)
            implements BudgetEvent {}

    /** It counts no longer. */
    @StoredAs("budget.dropped")
    @Revision("1")
    record Dropped(BudgetId budgetId, String reason, PersonId by, Occurred occurred) implements BudgetEvent {}
}
