package org.bandtrail.supplystock.costpolicies;

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
@AggregateRoot(type = "cost-policy")
final class CostPolicyAggregate {
    static final AggregateOf<CostPolicyAggregate> DECLARED =
            new AggregateOf<>("cost-policy", CostPolicyAggregate.class, CostPolicyCommand.class, CostPolicyEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private CostPolicy policy = CostPolicy.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<CostPolicyEvent> handle(CostPolicyCommand command) {
        return Decided.applied(policy.decide(command));
    }

    @EventSourcingHandler
    void on(CostPolicyEvent event) {
        storedId = DECLARED.storedId(event.policy());
        policy = policy.evolve(event);
    }
}
