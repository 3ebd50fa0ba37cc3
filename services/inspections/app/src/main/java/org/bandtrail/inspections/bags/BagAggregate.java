package org.bandtrail.inspections.bags;

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

/** Axon's view of a bag. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "bag")
final class BagAggregate {
    static final AggregateOf<BagAggregate> DECLARED =
            new AggregateOf<>("bag", BagAggregate.class, BagCommand.class, BagEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Bag bag = Bag.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BagEvent> handle(BagCommand command) {
        return Decided.applied(bag.decide(command));
    }

    @EventSourcingHandler
    void on(BagEvent event) {
        storedId = DECLARED.storedId(event.bag());
        bag = bag.evolve(event);
    }
}
