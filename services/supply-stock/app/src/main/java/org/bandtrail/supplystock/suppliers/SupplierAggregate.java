package org.bandtrail.supplystock.suppliers;

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

/** Axon's view of a supplier. */
@AggregateRoot(type = "supplier")
final class SupplierAggregate {
    static final AggregateOf<SupplierAggregate> DECLARED =
            new AggregateOf<>("supplier", SupplierAggregate.class, SupplierCommand.class, SupplierEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Supplier supplier = Supplier.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<SupplierEvent> handle(SupplierCommand command) {
        return Decided.applied(supplier.decide(command));
    }

    @EventSourcingHandler
    void on(SupplierEvent event) {
        storedId = DECLARED.storedId(event.supplierId());
        supplier = supplier.evolve(event);
    }
}
