package org.bandtrail.siteinstalls.hostchecks;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a tree's host checks. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "host-check")
final class HostCheckAggregate {
    static final AggregateOf<HostCheckAggregate> DECLARED =
            new AggregateOf<>("host-check", HostCheckAggregate.class, HostCheckCommand.class, HostCheckEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private HostCheck checks = HostCheck.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(HostCheckCommand command) {
        checks.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(HostCheckEvent event) {
        storedId = DECLARED.storedId(event.treeId());
        checks = checks.evolve(event);
    }
}
