package org.bandtrail.supplystock.depots;

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

/** Axon's view of a depot. */
@AggregateRoot(type = "depot")
final class DepotAggregate {
    static final AggregateOf<DepotAggregate> DECLARED =
            new AggregateOf<>("depot", DepotAggregate.class, DepotCommand.class, DepotEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Depot depot = Depot.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<DepotEvent> handle(DepotCommand command) {
        return Decided.applied(depot.decide(command));
    }

    @EventSourcingHandler
    void on(DepotEvent event) {
        storedId = DECLARED.storedId(event.depotId());
        depot = depot.evolve(event);
    }
}
