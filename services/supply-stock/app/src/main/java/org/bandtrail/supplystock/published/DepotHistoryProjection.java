package org.bandtrail.supplystock.published;

import java.util.List;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.deliveries.DeliveryEvent;
import org.bandtrail.supplystock.holds.HoldEvent;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.stereotype.Component;

/**
 * Tells what happened in the depots before this service told of it. It goes through the whole history once, a page at a
 * time, and passes over everything that {@link PublishedDepots} told when it happened. Since changes add up in any
 * order, and reservations name their sequence, new events and old ones may be told side by side.
 */
@Component
final class DepotHistoryProjection implements Projection {
    private final Outbox outbox;

    DepotHistoryProjection(Outbox outbox) {
        this.outbox = outbox;
    }

    @Override
    public String name() {
        return "depot-history-told";
    }

    @Override
    public List<String> tables() {
        return List.of();
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class, DeliveryEvent.class, HoldEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        outbox.appendUntold(page.stream()
                .flatMap(event -> DepotNews.of(event.payload(), event.sequence()).stream()
                        .map(told -> new Outbox.Told(event.eventId(), told)))
                .toList());
    }
}
