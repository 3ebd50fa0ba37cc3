package org.bandtrail.supplystock.siteshares;

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

/** Axon's view of who pays for a site. */
@AggregateRoot(type = "site-share")
final class SiteShareAggregate {
    static final AggregateOf<SiteShareAggregate> DECLARED =
            new AggregateOf<>("site-share", SiteShareAggregate.class, SiteShareCommand.class, SiteShareEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private SiteShare known = SiteShare.NONE;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<SiteShareEvent> handle(SiteShareCommand command) {
        return Decided.applied(known.decide(command));
    }

    @EventSourcingHandler
    void on(SiteShareEvent event) {
        storedId = DECLARED.storedId(event.siteId());
        known = known.evolve(event);
    }
}
