package org.bandtrail.supplystock.reorderpoints;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/**
 * An event of a reel or batch as reordering sees it: what moved on which day.
 *
 * @param holding which reel or batch
 * @param received what it is, null for every event but the receipt
 * @param day UTC day on which it happened, not the day on which the books learnt of it
 * @param moves quantities in millimetres or pieces
 */
record DepotMoves(Holding holding, @Nullable Received received, LocalDate day, List<Move> moves) {

    /**
     * @param kind {@code reel} or {@code batch}, because a reel and a batch may bear the same label
     */
    record Holding(String kind, String id) {}

    /** What a receipt says about its reel or batch. */
    record Received(MaterialCode material, MaterialKind kind) {}

    static DepotMoves of(Object event) {
        return switch (event) {
            case ReelEvent.Received reel -> of(reel, new Received(reel.material(), reel.kind()));
            case ReelEvent.MadeBySlitting made -> of(made, new Received(made.material(), made.kind()));
            case ReelEvent reel -> of(reel, null);
            case BatchEvent.Received batch -> of(batch, new Received(batch.material(), batch.kind()));
            case BatchEvent batch -> of(batch, null);
            default ->
                throw new IllegalArgumentException("Event [%s] is of neither a reel nor a batch.".formatted(event));
        };
    }

    private static DepotMoves of(ReelEvent reel, @Nullable Received received) {
        return of(new Holding("reel", reel.reelId().value()), received, reel.entry());
    }

    private static DepotMoves of(BatchEvent batch, @Nullable Received received) {
        return of(new Holding("batch", batch.batchId().value()), received, batch.entry());
    }

    private static DepotMoves of(Holding holding, @Nullable Received received, Entry entry) {
        LocalDate day = entry.occurred().happened().atOffset(ZoneOffset.UTC).toLocalDate();
        return new DepotMoves(holding, received, day, entry.moves());
    }

    /** What was fitted to trees or spoilt on the job: it left a person's custody and nobody will have it again. */
    long used() {
        return moves.stream()
                .filter(move -> fromPerson(move) && usedUp(move))
                .mapToLong(Move::quantity)
                .sum();
    }

    /** Material that a person had not brought back and then turns up on a tree came from that person all the same. */
    private static boolean fromPerson(Move move) {
        return move.source().kind() == PlaceKind.CREW || move.source().kind() == PlaceKind.MISSING;
    }

    private static boolean usedUp(Move move) {
        return move.target().kind() == PlaceKind.TREE || move.target().kind() == PlaceKind.BAG;
    }
}
