package org.bandtrail.supplystock.recalls;

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

/** Axon's view of a recall. */
@AggregateRoot(type = "recall")
final class RecallAggregate {
    static final AggregateOf<RecallAggregate> DECLARED =
            new AggregateOf<>("recall", RecallAggregate.class, RecallCommand.class, RecallEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Recall recall = Recall.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<RecallEvent> handle(RecallCommand command) {
        return Decided.applied(recall.decide(command));
    }

    @EventSourcingHandler
    void on(RecallEvent event) {
        storedId = DECLARED.storedId(event.recallId());
        recall = recall.evolve(event);
    }
}
