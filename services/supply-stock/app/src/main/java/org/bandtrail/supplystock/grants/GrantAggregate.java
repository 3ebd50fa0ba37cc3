package org.bandtrail.supplystock.grants;

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

/** Axon's view of a grant. */
@AggregateRoot(type = "grant")
final class GrantAggregate {
    static final AggregateOf<GrantAggregate> DECLARED =
            new AggregateOf<>("grant", GrantAggregate.class, GrantCommand.class, GrantEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Grant known = Grant.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<GrantEvent> handle(GrantCommand command) {
        return Decided.applied(known.decide(command));
    }

    @EventSourcingHandler
    void on(GrantEvent event) {
        storedId = DECLARED.storedId(event.grantId());
        known = known.evolve(event);
    }
}
