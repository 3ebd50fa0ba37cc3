package org.bandtrail.supplystock.batches;

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

/** Axon's view of a batch. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "batch")
final class BatchAggregate {
    static final AggregateOf<BatchAggregate> DECLARED =
            new AggregateOf<>("batch", BatchAggregate.class, BatchCommand.class, BatchEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Batch batch = Batch.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BatchEvent> handle(BatchCommand command) {
        return Decided.applied(batch.decide(command));
    }

    @EventSourcingHandler
    void on(BatchEvent event) {
        storedId = DECLARED.storedId(event.batchId());
        batch = batch.evolve(event);
    }
}
