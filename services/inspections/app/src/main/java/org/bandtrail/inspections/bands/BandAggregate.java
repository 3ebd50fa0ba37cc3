package org.bandtrail.inspections.bands;

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

/** Axon's view of a band. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "band")
final class BandAggregate {
    static final AggregateOf<BandAggregate> DECLARED =
            new AggregateOf<>("band", BandAggregate.class, BandCommand.class, BandEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Band band = Band.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BandEvent> handle(BandCommand command) {
        return Decided.applied(band.decide(command));
    }

    @EventSourcingHandler
    void on(BandEvent event) {
        storedId = DECLARED.storedId(event.band());
        band = band.evolve(event);
    }
}
