package org.bandtrail.supplystock.ledger;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.reels.ReelEvent;

/** The books worked out a second time, straight from the events: no pages, no pools, no tables, only sums. */
final class PlainBooks {
    /** Quantity by reel or batch and place. */
    final Map<String, Long> quantities = new TreeMap<>();

    /** What each reel cost less what accounts paid for it, in minor units. */
    final Map<String, Long> reelValues = new TreeMap<>();

    /** What accounts paid for received reels, slitting left out, by account. */
    final Map<String, Long> reelCharges = new TreeMap<>();

    /** What all batches of an item cost, as now known. */
    final Map<String, Long> itemCosts = new TreeMap<>();

    static PlainBooks of(List<StoredEvent> events) {
        PlainBooks books = new PlainBooks();
        Map<String, String> items = new TreeMap<>();
        for (StoredEvent stored : events) {
            switch (stored.payload()) {
                case ReelEvent event -> books.reel(event);
                case BatchEvent event -> books.batch(event, items);
                default -> assertNoMove(stored);
            }
        }
        books.quantities.values().removeIf(quantity -> quantity == 0);
        books.reelCharges.values().removeIf(minor -> minor == 0);
        return books;
    }

    private static void assertNoMove(StoredEvent stored) {
        if (stored.payload() instanceof Entry) {
            throw new AssertionError("Nobody counted " + stored);
        }
    }

    private void reel(ReelEvent event) {
        String id = event.reelId().value();
        moved("reel " + id, event.entry());
        long cost = switch (event) {
            case ReelEvent.Received in -> in.cost().minor();
            case ReelEvent.MadeBySlitting in -> in.cost().minor();
            case ReelEvent.SentBack back -> -back.cost().minor();
            case ReelEvent.CostChanged changed -> changed.delta().minor();
            default -> 0;
        };
        reelValues.merge(id, cost, Long::sum);
        for (Charge charge : event.entry().charges()) {
            reelValues.merge(id, -charge.minor(), Long::sum);
            if (!charge.account().startsWith("slit:")) {
                reelCharges.merge(charge.account(), charge.minor(), Long::sum);
            }
        }
    }

    private void batch(BatchEvent event, Map<String, String> items) {
        String id = event.batchId().value();
        moved("batch " + id, event.entry());
        if (event instanceof BatchEvent.Received in) {
            items.put(id, in.material().value());
        }
        long cost = switch (event) {
            case BatchEvent.Received in -> in.cost().minor();
            case BatchEvent.SentBack back -> -back.cost().minor();
            case BatchEvent.CostChanged changed -> changed.delta().minor();
            default -> 0;
        };
        if (cost != 0) {
            itemCosts.merge(items.get(id), cost, Long::sum);
        }
    }

    private void moved(String holding, Entry entry) {
        for (Move move : entry.moves()) {
            quantities.merge(holding + " " + move.source(), -move.quantity(), Long::sum);
            quantities.merge(holding + " " + move.target(), move.quantity(), Long::sum);
        }
    }
}
