package org.bandtrail.supplystock.counts;

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

/** Axon's view of a count. */
@AggregateRoot(type = "count")
final class CountAggregate {
    static final AggregateOf<CountAggregate> DECLARED =
            new AggregateOf<>("count", CountAggregate.class, CountCommand.class, CountEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Count count = Count.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<CountEvent> handle(CountCommand command) {
        return Decided.applied(count.decide(command));
    }

    @EventSourcingHandler
    void on(CountEvent event) {
        storedId = DECLARED.storedId(event.countId());
        count = count.evolve(event);
    }
}
