package org.bandtrail.supplystock.bins;

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

/** Axon's view of a bin. */
@AggregateRoot(type = "bin")
final class BinAggregate {
    static final AggregateOf<BinAggregate> DECLARED =
            new AggregateOf<>("bin", BinAggregate.class, BinCommand.class, BinEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Bin bin = Bin.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BinEvent> handle(BinCommand command) {
        return Decided.applied(bin.decide(command));
    }

    @EventSourcingHandler
    void on(BinEvent event) {
        storedId = DECLARED.storedId(event.binId());
        bin = bin.evolve(event);
    }
}
