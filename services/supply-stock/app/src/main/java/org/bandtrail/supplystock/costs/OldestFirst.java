package org.bandtrail.supplystock.costs;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Pieces;

/**
 * Chooses the batches from which a number of fasteners is handed out: the oldest first, so that cost follows the flow
 * of the goods (FIFO, IAS 2 Inventories paragraphs 25 and 27) and nothing rusts at the back of the shelf. Batches
 * received at the same moment are taken in the order of their identities, so that the choice is the same on every
 * machine. Batches without pieces, or in deficit, are passed over.
 */
public final class OldestFirst {
    private OldestFirst() {}

    /** A batch on the shelf: when it came, and how many pieces the depot has of it now. */
    public record OnShelf(BatchId batch, Instant receivedAt, Pieces pieces) {}

    /** So many pieces of one batch. */
    public record Pick(BatchId batch, Pieces pieces) {}

    /**
     * What to take.
     *
     * @param picks oldest batch first
     * @param missing how many pieces the shelf is short of; 0 when all are there. The caller refuses or hands out less
     */
    public record Choice(List<Pick> picks, Pieces missing) {
        /** Tells whether all wanted pieces are there. */
        public boolean complete() {
            return missing.equals(Pieces.ZERO);
        }
    }

    /**
     * Chooses batches.
     *
     * @param wanted how many pieces, 1 or more
     * @param shelf the batches of one material in one depot, in any order
     * @throws IllegalArgumentException if fewer than 1 piece is wanted
     */
    public static Choice choose(Pieces wanted, List<OnShelf> shelf) {
        if (!wanted.isPositive()) {
            throw new IllegalArgumentException(
                    "Wanted pieces [%d] are fewer than 1. Give how many to hand out.".formatted(wanted.count()));
        }
        List<OnShelf> oldestFirst = shelf.stream()
                .filter(batch -> batch.pieces().isPositive())
                .sorted(Comparator.comparing(OnShelf::receivedAt)
                        .thenComparing(batch -> batch.batch().value()))
                .toList();
        List<Pick> picks = new ArrayList<>();
        long missing = wanted.count();
        for (OnShelf batch : oldestFirst) {
            long take = Math.min(missing, batch.pieces().count());
            if (take > 0) {
                picks.add(new Pick(batch.batch(), Pieces.of(take)));
                missing -= take;
            }
        }
        return new Choice(List.copyOf(picks), Pieces.of(missing));
    }
}
