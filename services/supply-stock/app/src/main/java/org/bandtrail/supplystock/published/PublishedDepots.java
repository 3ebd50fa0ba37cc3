package org.bandtrail.supplystock.published;

import java.util.List;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.WhenAppended;
import org.springframework.stereotype.Component;

/** Tells what changes in the depots, in the transaction in which it changes. */
@Component
final class PublishedDepots implements WhenAppended {
    private final Outbox outbox;

    PublishedDepots(Outbox outbox) {
        this.outbox = outbox;
    }

    @Override
    public void appended(List<AppendedEvent> events) {
        outbox.appendAll(events.stream()
                .flatMap(event -> DepotNews.of(event.payload(), event.sequence()).stream()
                        .map(told -> new Outbox.Told(event.eventId(), told)))
                .toList());
    }
}
