package org.bandtrail.siteinstalls.trees;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a tree. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "tree")
final class TreeAggregate {
    static final AggregateOf<TreeAggregate> DECLARED =
            new AggregateOf<>("tree", TreeAggregate.class, TreeCommand.class, TreeEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Tree tree = Tree.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(TreeCommand command) {
        tree.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(TreeEvent event) {
        storedId = DECLARED.storedId(event.treeId());
        tree = tree.evolve(event);
    }
}
