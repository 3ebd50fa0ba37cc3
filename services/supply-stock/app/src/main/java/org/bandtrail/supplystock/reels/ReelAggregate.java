package org.bandtrail.supplystock.reels;

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

/** Axon's view of a reel. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "reel")
final class ReelAggregate {
    static final AggregateOf<ReelAggregate> DECLARED =
            new AggregateOf<>("reel", ReelAggregate.class, ReelCommand.class, ReelEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Reel reel = Reel.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<ReelEvent> handle(ReelCommand command) {
        return Decided.applied(reel.decide(command));
    }

    @EventSourcingHandler
    void on(ReelEvent event) {
        storedId = DECLARED.storedId(event.reelId());
        reel = reel.evolve(event);
    }
}
