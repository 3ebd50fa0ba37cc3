package org.bandtrail.siteinstalls.meshpieces;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a piece of mesh. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "mesh-piece")
final class MeshPieceAggregate {
    static final AggregateOf<MeshPieceAggregate> DECLARED =
            new AggregateOf<>("mesh-piece", MeshPieceAggregate.class, MeshPieceCommand.class, MeshPieceEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private MeshPiece piece = MeshPiece.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(MeshPieceCommand command) {
        piece.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(MeshPieceEvent event) {
        storedId = DECLARED.storedId(event.pieceId());
        piece = piece.evolve(event);
    }
}
