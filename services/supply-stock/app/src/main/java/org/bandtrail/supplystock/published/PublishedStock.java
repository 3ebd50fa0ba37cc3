package org.bandtrail.supplystock.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.WhenAppended;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.contract.v1.KitHandedOut;
import org.bandtrail.supplystock.contract.v1.ReelReceived;
import org.bandtrail.supplystock.handouts.KitEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Tells of received reels and of kits handed out. */
@Component
final class PublishedStock implements WhenAppended {
    private final Outbox outbox;
    private final Items items;

    PublishedStock(Outbox outbox, Items items) {
        this.outbox = outbox;
        this.items = items;
    }

    @Override
    public void appended(List<AppendedEvent> events) {
        List<Outbox.Told> all = new ArrayList<>();
        for (AppendedEvent event : events) {
            Object told = told(event.payload());
            if (told != null) {
                all.add(new Outbox.Told(event.eventId(), told));
            }
        }
        outbox.appendAll(all);
    }

    private @Nullable Object told(Object event) {
        return switch (event) {
            case ReelEvent.Received received -> reelReceived(received);
            case KitEvent.HandedOut out -> kitHandedOut(out);
            default -> null;
        };
    }

    private ReelReceived reelReceived(ReelEvent.Received received) {
        Optional<ItemRow> item = items.one(received.material());
        Entry entry = received.entry();
        return new ReelReceived(
                received.reelId().value(),
                received.material().value(),
                received.kind().name(),
                item.map(ItemRow::name).orElse(received.material().value()),
                item.map(ItemRow::widthMm).orElse(0L),
                item.map(ItemRow::openingMm).orElse(null),
                received.length().mm(),
                Objects.requireNonNull(entry.moves().getFirst().target().depotId())
                        .value(),
                entry.occurred().happened(),
                entry.occurred().recorded(),
                entry.by().value());
    }

    private static KitHandedOut kitHandedOut(KitEvent.HandedOut out) {
        return new KitHandedOut(
                out.kitId().value(),
                out.depot().value(),
                out.crew().value(),
                out.person().value(),
                out.lines().stream()
                        .filter(line -> line.kind().onReels())
                        .map(line -> new KitHandedOut.ReelInKit(
                                line.id(), line.material().value(), line.kind().name(), line.quantity()))
                        .toList(),
                out.lines().stream()
                        .filter(line -> line.kind() == MaterialKind.FASTENER)
                        .map(line -> new KitHandedOut.BatchInKit(
                                line.id(), line.material().value(), line.quantity()))
                        .toList(),
                out.occurred().happened(),
                out.occurred().recorded(),
                out.by().value());
    }
}
