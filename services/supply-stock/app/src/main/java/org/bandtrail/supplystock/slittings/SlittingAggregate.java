package org.bandtrail.supplystock.slittings;

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

/** Axon's view of a slitting. */
@AggregateRoot(type = "slitting")
final class SlittingAggregate {
    static final AggregateOf<SlittingAggregate> DECLARED =
            new AggregateOf<>("slitting", SlittingAggregate.class, SlittingCommand.class, SlittingEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Slitting slitting = Slitting.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<SlittingEvent> handle(SlittingCommand command) {
        return Decided.applied(slitting.decide(command));
    }

    @EventSourcingHandler
    void on(SlittingEvent event) {
        storedId = DECLARED.storedId(event.slittingId());
        slitting = slitting.evolve(event);
    }
}
