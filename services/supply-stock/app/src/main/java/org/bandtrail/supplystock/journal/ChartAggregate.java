package org.bandtrail.supplystock.journal;

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

/** Axon's view of the organisation's accounts. */
@AggregateRoot(type = "chart")
final class ChartAggregate {
    static final AggregateOf<ChartAggregate> DECLARED =
            new AggregateOf<>("chart", ChartAggregate.class, ChartCommand.class, ChartEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Chart known = Chart.EMPTY;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<ChartEvent> handle(ChartCommand command) {
        return Decided.applied(known.decide(command));
    }

    @EventSourcingHandler
    void on(ChartEvent event) {
        storedId = DECLARED.storedId(event.books());
        known = known.evolve(event);
    }
}
