package org.bandtrail.siteinstalls.policies;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a cut-length policy. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "cut-policy")
final class CutPolicyAggregate {
    static final AggregateOf<CutPolicyAggregate> DECLARED =
            new AggregateOf<>("cut-policy", CutPolicyAggregate.class, CutPolicyCommand.class, CutPolicyEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private CutPolicy policy = CutPolicy.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(CutPolicyCommand command) {
        policy.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(CutPolicyEvent event) {
        storedId = DECLARED.storedId(event.policyId());
        policy = policy.evolve(event);
    }
}
