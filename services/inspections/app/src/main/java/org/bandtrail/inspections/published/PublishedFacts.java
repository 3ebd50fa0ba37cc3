package org.bandtrail.inspections.published;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.WhenAppended;
import org.bandtrail.inspections.bags.BagEvent;
import org.bandtrail.inspections.bands.BandEvent;
import org.springframework.stereotype.Component;

/** Puts what others need to know into the outbox, in the transaction that stores the private event. */
@Component
class PublishedFacts implements WhenAppended {
    private final Outbox outbox;

    PublishedFacts(Outbox outbox) {
        this.outbox = outbox;
    }

    @Override
    public void appended(List<AppendedEvent> events) {
        List<Outbox.Told> all = new ArrayList<>();
        for (AppendedEvent event : events) {
            told(event.payload()).forEach(told -> all.add(new Outbox.Told(event.eventId(), told)));
        }
        outbox.appendAll(all);
    }

    private static List<Object> told(Object event) {
        return switch (event) {
            case BandEvent band -> PublishedBands.of(band);
            case BagEvent bag -> PublishedBags.of(bag);
            default -> throw new IllegalStateException("Nobody says what others are told of %s.".formatted(event));
        };
    }
}
