package org.bandtrail.supplystock.budgets;

import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.Decided;
import org.jspecify.annotations.Nullable;

/** Axon's view of a budget. */
@AggregateRoot(type = "budget")
final class BudgetAggregate {
    static final AggregateOf<BudgetAggregate> DECLARED =
            new AggregateOf<>("budget", BudgetAggregate.class, BudgetCommand.class, BudgetEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Budget known = Budget.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BudgetEvent> handle(BudgetCommand command) {
        return Decided.applied(known.decide(command));
    }

    @EventSourcingHandler
    void on(BudgetEvent event) {
        storedId = DECLARED.storedId(event.budgetId());
        known = known.evolve(event);
    }
}
