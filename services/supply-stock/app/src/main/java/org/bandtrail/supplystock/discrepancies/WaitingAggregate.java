package org.bandtrail.supplystock.discrepancies;

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

/** Axon's view of an open question that waits. */
@AggregateRoot(type = "waiting")
final class WaitingAggregate {
    static final AggregateOf<WaitingAggregate> DECLARED =
            new AggregateOf<>("waiting", WaitingAggregate.class, WaitingCommand.class, WaitingEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Waiting waiting = Waiting.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<WaitingEvent> handle(WaitingCommand command) {
        return Decided.applied(waiting.decide(command));
    }

    @EventSourcingHandler
    void on(WaitingEvent event) {
        storedId = DECLARED.storedId(event.question());
        waiting = waiting.evolve(event);
    }
}
