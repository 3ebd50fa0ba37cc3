package org.bandtrail.supplystock.transfers;

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

/** Axon's view of a transfer. */
@AggregateRoot(type = "transfer")
final class TransferAggregate {
    static final AggregateOf<TransferAggregate> DECLARED =
            new AggregateOf<>("transfer", TransferAggregate.class, TransferCommand.class, TransferEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Transfer transfer = Transfer.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<TransferEvent> handle(TransferCommand command) {
        return Decided.applied(transfer.decide(command));
    }

    @EventSourcingHandler
    void on(TransferEvent event) {
        storedId = DECLARED.storedId(event.transferId());
        transfer = transfer.evolve(event);
    }
}
