package org.bandtrail.supplystock.purchases;

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

/** Axon's view of a purchase. */
@AggregateRoot(type = "purchase")
final class PurchaseAggregate {
    static final AggregateOf<PurchaseAggregate> DECLARED =
            new AggregateOf<>("purchase", PurchaseAggregate.class, PurchaseCommand.class, PurchaseEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Purchase purchase = Purchase.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<PurchaseEvent> handle(PurchaseCommand command) {
        return Decided.applied(purchase.decide(command));
    }

    @EventSourcingHandler
    void on(PurchaseEvent event) {
        storedId = DECLARED.storedId(event.purchaseId());
        purchase = purchase.evolve(event);
    }
}
