package org.bandtrail.supplystock.billings;

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

/** Axon's view of the billings of a purchase. */
@AggregateRoot(type = "billing")
final class BillingAggregate {
    static final AggregateOf<BillingAggregate> DECLARED =
            new AggregateOf<>("billing", BillingAggregate.class, BillingCommand.class, BillingEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Billing billing = Billing.NOTHING;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BillingEvent> handle(BillingCommand command) {
        return Decided.applied(billing.decide(command));
    }

    @EventSourcingHandler
    void on(BillingEvent event) {
        storedId = DECLARED.storedId(event.purchase());
        billing = billing.evolve(event);
    }
}
