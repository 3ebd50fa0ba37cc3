package org.bandtrail.supplystock.landedcosts;

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

/** Axon's view of a landed cost. */
@AggregateRoot(type = "landed-cost")
final class LandedCostAggregate {
    static final AggregateOf<LandedCostAggregate> DECLARED =
            new AggregateOf<>("landed-cost", LandedCostAggregate.class, LandedCostCommand.class, LandedCostEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private LandedCost landedCost = LandedCost.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<LandedCostEvent> handle(LandedCostCommand command) {
        return Decided.applied(landedCost.decide(command));
    }

    @EventSourcingHandler
    void on(LandedCostEvent event) {
        storedId = DECLARED.storedId(event.landedCostId());
        landedCost = landedCost.evolve(event);
    }
}
