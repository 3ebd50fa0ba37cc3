package org.bandtrail.supplystock.crews;

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

/** Axon's view of a crew. */
@AggregateRoot(type = "crew")
final class CrewAggregate {
    static final AggregateOf<CrewAggregate> DECLARED =
            new AggregateOf<>("crew", CrewAggregate.class, CrewCommand.class, CrewEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Crew crew = Crew.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<CrewEvent> handle(CrewCommand command) {
        return Decided.applied(crew.decide(command));
    }

    @EventSourcingHandler
    void on(CrewEvent event) {
        storedId = DECLARED.storedId(event.crewId());
        crew = crew.evolve(event);
    }
}
