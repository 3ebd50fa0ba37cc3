package org.bandtrail.supplystock.periods;

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

/** Axon's view of the months of a set of books. */
@AggregateRoot(type = "period")
final class PeriodAggregate {
    static final AggregateOf<PeriodAggregate> DECLARED =
            new AggregateOf<>("period", PeriodAggregate.class, PeriodCommand.class, PeriodEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Period months = Period.NEVER_CLOSED;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<PeriodEvent> handle(PeriodCommand command) {
        return Decided.applied(months.decide(command));
    }

    @EventSourcingHandler
    void on(PeriodEvent event) {
        storedId = DECLARED.storedId(event.books());
        months = months.evolve(event);
    }
}
