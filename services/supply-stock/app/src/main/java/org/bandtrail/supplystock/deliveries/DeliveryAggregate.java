package org.bandtrail.supplystock.deliveries;

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

/** Axon's view of a delivery. */
@AggregateRoot(type = "delivery")
final class DeliveryAggregate {
    static final AggregateOf<DeliveryAggregate> DECLARED =
            new AggregateOf<>("delivery", DeliveryAggregate.class, DeliveryCommand.class, DeliveryEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Delivery delivery = Delivery.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<DeliveryEvent> handle(DeliveryCommand command) {
        return Decided.applied(delivery.decide(command));
    }

    @EventSourcingHandler
    void on(DeliveryEvent event) {
        storedId = DECLARED.storedId(event.deliveryId());
        delivery = delivery.evolve(event);
    }
}
