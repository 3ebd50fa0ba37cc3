package org.bandtrail.supplystock.items;

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

/** Axon's view of an item. */
@AggregateRoot(type = "item")
final class ItemAggregate {
    static final AggregateOf<ItemAggregate> DECLARED =
            new AggregateOf<>("item", ItemAggregate.class, ItemCommand.class, ItemEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Item item = Item.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<ItemEvent> handle(ItemCommand command) {
        return Decided.applied(item.decide(command));
    }

    @EventSourcingHandler
    void on(ItemEvent event) {
        storedId = DECLARED.storedId(event.material());
        item = item.evolve(event);
    }
}
