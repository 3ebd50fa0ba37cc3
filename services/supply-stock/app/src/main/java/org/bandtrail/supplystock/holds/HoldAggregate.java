package org.bandtrail.supplystock.holds;

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

/** Axon's view of the holds on one reel or batch. */
@AggregateRoot(type = "hold")
final class HoldAggregate {
    static final AggregateOf<HoldAggregate> DECLARED =
            new AggregateOf<>("hold", HoldAggregate.class, HoldCommand.class, HoldEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Hold hold = Hold.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<HoldEvent> handle(HoldCommand command) {
        return Decided.applied(hold.decide(command));
    }

    @EventSourcingHandler
    void on(HoldEvent event) {
        storedId = DECLARED.storedId(event.held());
        hold = hold.evolve(event);
    }
}
