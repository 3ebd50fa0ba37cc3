package org.bandtrail.inspections.bands;

import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;

/** Axon's view of a band. It decides nothing; an {@code if} here would be a rule in the wrong place. */
final class BandAggregate {
    static final AggregateOf<BandAggregate> DECLARED =
            new AggregateOf<>("band", BandAggregate.class, BandCommand.class, BandEvent.class);

    @AggregateIdentifier
    private String storedId = "";

    private Band band = Band.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<BandEvent> handle(BandCommand command) {
        List<BandEvent> events = band.decide(command);
        events.forEach(AggregateLifecycle::apply);
        return events;
    }

    @EventSourcingHandler
    void on(BandEvent event) {
        storedId = DECLARED.storedId(event.band());
        band = band.evolve(event);
    }
}
