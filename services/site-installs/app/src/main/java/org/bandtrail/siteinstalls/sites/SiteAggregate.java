package org.bandtrail.siteinstalls.sites;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

/** Axon's view of a site. It decides nothing; an {@code if} here would be a rule in the wrong place. */
@AggregateRoot(type = "site")
final class SiteAggregate {
    static final AggregateOf<SiteAggregate> DECLARED =
            new AggregateOf<>("site", SiteAggregate.class, SiteCommand.class, SiteEvent.class);

    // Null until the first event: Axon takes an empty text for the identity and stores every first event under it.
    @AggregateIdentifier
    private @Nullable String storedId;

    private Site site = Site.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(SiteCommand command) {
        site.decide(command).forEach(AggregateLifecycle::apply);
    }

    @EventSourcingHandler
    void on(SiteEvent event) {
        storedId = DECLARED.storedId(event.siteId());
        site = site.evolve(event);
    }
}
