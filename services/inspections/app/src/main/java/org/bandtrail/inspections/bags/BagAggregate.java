package org.bandtrail.inspections.bags;

import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;

/** Axon's view of a bag. It decides nothing; an {@code if} here would be a rule in the wrong place. */
final class BagAggregate {
    static final AggregateOf<BagAggregate> DECLARED =
            new AggregateOf<>("bag", BagAggregate.class, BagCommand.class, BagEvent.class);

    @AggregateIdentifier
    private String storedId = "";

    private Bag bag = Bag.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BagEvent> handle(BagCommand command) {
        List<BagEvent> events = bag.decide(command);
        events.forEach(AggregateLifecycle::apply);
        return events;
    }

    @EventSourcingHandler
    void on(BagEvent event) {
        storedId = DECLARED.storedId(event.bag());
        bag = bag.evolve(event);
    }
}
