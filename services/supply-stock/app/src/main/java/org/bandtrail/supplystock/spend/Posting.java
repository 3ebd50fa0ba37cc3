package org.bandtrail.supplystock.spend;

import java.util.stream.Stream;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Line;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/**
 * An event of a reel or batch as the spend sees it: its entry in the books and, if it is the receipt, what was bought.
 *
 * @param holding which reel or batch
 * @param entry moves and charges
 * @param bought null for every event but the receipt
 * @param revalued by how much quantity and cost changed after the receipt
 */
record Posting(Holding holding, Entry entry, @Nullable Bought bought, Line.Revalued revalued) {

    /**
     * @param kind {@code reel} or {@code batch}, because a reel and a batch may bear the same label
     */
    record Holding(String kind, String id) {}

    /**
     * @param quantity millimetres or pieces
     */
    record Bought(MaterialCode material, MaterialKind kind, long quantity, Money cost) {}

    static Posting of(Object event) {
        return switch (event) {
            case ReelEvent.Received reel ->
                new Posting(
                        reel(reel),
                        reel.entry(),
                        new Bought(reel.material(), reel.kind(), reel.length().mm(), reel.cost()),
                        Line.Revalued.NOT);
            case ReelEvent.MadeBySlitting reel ->
                new Posting(
                        reel(reel),
                        reel.entry(),
                        new Bought(reel.material(), reel.kind(), reel.length().mm(), reel.cost()),
                        Line.Revalued.NOT);
            case ReelEvent.SentBack reel ->
                later(reel(reel), reel.entry(), -reel.taken().mm(), -reel.cost().minor());
            case ReelEvent.CostChanged reel ->
                later(reel(reel), reel.entry(), 0, reel.delta().minor());
            case ReelEvent reel -> later(reel(reel), reel.entry(), 0, 0);
            case BatchEvent.Received batch ->
                new Posting(
                        batch(batch),
                        batch.entry(),
                        new Bought(
                                batch.material(), batch.kind(), batch.pieces().count(), batch.cost()),
                        Line.Revalued.NOT);
            case BatchEvent.SentBack batch ->
                later(
                        batch(batch),
                        batch.entry(),
                        -batch.taken().count(),
                        -batch.cost().minor());
            case BatchEvent.CostChanged batch ->
                later(batch(batch), batch.entry(), 0, batch.delta().minor());
            case BatchEvent batch -> later(batch(batch), batch.entry(), 0, 0);
            default ->
                throw new IllegalArgumentException("Event [%s] is of neither a reel nor a batch.".formatted(event));
        };
    }

    /** Whether its cost is no longer spread evenly over all that was bought. */
    boolean changesCost() {
        return !revalued.equals(Line.Revalued.NOT)
                || entry.charges().stream().anyMatch(charge -> charge.account().equals(Charge.WRITTEN_DOWN));
    }

    private static Posting later(Holding holding, Entry entry, long boughtDelta, long costDelta) {
        return new Posting(holding, entry, null, new Line.Revalued(boughtDelta, costDelta));
    }

    private static Holding reel(ReelEvent event) {
        return new Holding("reel", event.reelId().value());
    }

    private static Holding batch(BatchEvent event) {
        return new Holding("batch", event.batchId().value());
    }

    /** The tree the material went to or came from, or empty if the entry names none. */
    String tree() {
        return entry.moves().stream()
                .flatMap(move -> Stream.of(move.target(), move.source()))
                .filter(place -> place.kind() == PlaceKind.TREE)
                .map(Place::id)
                .findFirst()
                .orElse("");
    }

    /** How much left stock by the moves; negative if it came back. */
    long used() {
        return entry.moves().stream().mapToLong(Posting::leavesStock).sum();
    }

    private static long leavesStock(Move move) {
        return (outOfStock(move.target()) || move.target().kind() == PlaceKind.SLIT ? move.quantity() : 0)
                - (outOfStock(move.source()) ? move.quantity() : 0);
    }

    private static boolean outOfStock(Place place) {
        return !place.kind().inStock() && !place.kind().isOrigin();
    }
}
