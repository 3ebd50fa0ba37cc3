package org.bandtrail.supplystock.tolerances;

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

/** Axon's view of the policy. */
@AggregateRoot(type = "tolerance")
final class ToleranceAggregate {
    static final AggregateOf<ToleranceAggregate> DECLARED =
            new AggregateOf<>("tolerance", ToleranceAggregate.class, ToleranceCommand.class, ToleranceEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Tolerance tolerance = Tolerance.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<ToleranceEvent> handle(ToleranceCommand command) {
        return Decided.applied(tolerance.decide(command));
    }

    @EventSourcingHandler
    void on(ToleranceEvent event) {
        storedId = DECLARED.storedId(event.policy());
        tolerance = tolerance.evolve(event);
    }
}
