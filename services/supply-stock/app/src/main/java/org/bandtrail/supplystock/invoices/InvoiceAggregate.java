package org.bandtrail.supplystock.invoices;

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

/** Axon's view of an invoice. */
@AggregateRoot(type = "invoice")
final class InvoiceAggregate {
    static final AggregateOf<InvoiceAggregate> DECLARED =
            new AggregateOf<>("invoice", InvoiceAggregate.class, InvoiceCommand.class, InvoiceEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Invoice invoice = Invoice.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<InvoiceEvent> handle(InvoiceCommand command) {
        return Decided.applied(invoice.decide(command));
    }

    @EventSourcingHandler
    void on(InvoiceEvent event) {
        storedId = DECLARED.storedId(event.invoiceId());
        invoice = invoice.evolve(event);
    }
}
