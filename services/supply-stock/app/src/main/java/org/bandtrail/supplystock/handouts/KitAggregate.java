package org.bandtrail.supplystock.handouts;

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

/** Axon's view of a kit. */
@AggregateRoot(type = "kit")
final class KitAggregate {
    static final AggregateOf<KitAggregate> DECLARED =
            new AggregateOf<>("kit", KitAggregate.class, KitCommand.class, KitEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Kit kit = Kit.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<KitEvent> handle(KitCommand command) {
        return Decided.applied(kit.decide(command));
    }

    @EventSourcingHandler
    void on(KitEvent event) {
        storedId = DECLARED.storedId(event.kitId());
        kit = kit.evolve(event);
    }
}
