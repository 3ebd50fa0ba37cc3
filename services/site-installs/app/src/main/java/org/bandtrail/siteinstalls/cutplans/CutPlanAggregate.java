package org.bandtrail.siteinstalls.cutplans;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a cut plan. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "cut-plan")
final class CutPlanAggregate {
    static final AggregateOf<CutPlanAggregate> DECLARED =
            new AggregateOf<>("cut-plan", CutPlanAggregate.class, CutPlanCommand.class, CutPlanEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private CutPlan plan = CutPlan.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(CutPlanCommand command) {
        plan.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(CutPlanEvent event) {
        storedId = DECLARED.storedId(event.planId());
        plan = plan.evolve(event);
    }
}
