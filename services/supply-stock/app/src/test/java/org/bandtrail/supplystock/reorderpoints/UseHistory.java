package org.bandtrail.supplystock.reorderpoints;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelEvent;

/** Events of tape reels as the store would hand them to the projection, written by their moves. */
final class UseHistory {
    static final PersonId WHO = new PersonId("P-1");

    private final List<StoredEvent> events = new ArrayList<>();

    /** The events since the last call. */
    List<StoredEvent> takeEvents() {
        List<StoredEvent> taken = List.copyOf(events);
        events.clear();
        return taken;
    }

    void received(String reel, Place depot, long mm, String when) {
        add(new ReelEvent.Received(
                new ReelId(reel),
                new MaterialCode("TAPE-1"),
                MaterialKind.TAPE,
                Length.ofMm(mm),
                Money.of(1_000, "USD"),
                entry(Place.SUPPLIER, depot, mm, when)));
    }

    /** Which of the reel's events it is does not matter here: reordering looks at the moves alone. */
    void moved(String reel, Place source, Place target, long mm, String when) {
        add(new ReelEvent.LengthFitted(new ReelId(reel), "fact", entry(source, target, mm, when)));
    }

    private static Entry entry(Place source, Place target, long mm, String when) {
        return new Entry(List.of(new Move(source, target, mm)), List.of(), WHO, Occurred.at(Instant.parse(when)));
    }

    private void add(ReelEvent event) {
        long position = events.size() + 1L;
        events.add(new StoredEvent(position, new UUID(7, position), "reel/" + event.reelId(), position, event));
    }
}
