package org.bandtrail.siteinstalls.workplans;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a work plan. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "plan")
final class WorkPlanAggregate {
    static final AggregateOf<WorkPlanAggregate> DECLARED =
            new AggregateOf<>("plan", WorkPlanAggregate.class, WorkPlanCommand.class, WorkPlanEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private WorkPlan plan = WorkPlan.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(WorkPlanCommand command) {
        plan.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(WorkPlanEvent event) {
        storedId = DECLARED.storedId(event.planId());
        plan = plan.evolve(event);
    }
}
