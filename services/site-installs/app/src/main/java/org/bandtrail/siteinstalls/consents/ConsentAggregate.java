package org.bandtrail.siteinstalls.consents;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a consent. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "consent")
final class ConsentAggregate {
    static final AggregateOf<ConsentAggregate> DECLARED =
            new AggregateOf<>("consent", ConsentAggregate.class, ConsentCommand.class, ConsentEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Consent consent = Consent.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(ConsentCommand command) {
        consent.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(ConsentEvent event) {
        storedId = DECLARED.storedId(event.consentId());
        consent = consent.evolve(event);
    }
}
