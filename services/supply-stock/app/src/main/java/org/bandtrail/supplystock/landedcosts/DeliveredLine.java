package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.bandtrail.kernel.Money;

/**
 * One line of a delivery with the reels and batches that came of it.
 *
 * @param onReels whether its quantities are millimetres, not pieces
 * @param cost what it cost when it was received
 */
public record DeliveredLine(
        String deliveryId, int line, String materialCode, boolean onReels, Money cost, List<Holding> holdings) {

    /** Keeps the holdings as they are given. */
    public DeliveredLine {
        holdings = List.copyOf(holdings);
    }

    /**
     * A reel or batch.
     *
     * @param reel false for a batch
     * @param quantity millimetres or pieces on arrival
     */
    public record Holding(boolean reel, String id, long quantity) {}

    /** What the line weighs on this basis: minor units, millimetres or a number. */
    public long weight(Basis basis) {
        return switch (basis) {
            case VALUE -> cost.minor();
            case LENGTH -> onReels ? quantity() : 0;
            case COUNT -> holdings.size();
        };
    }

    /** Millimetres or pieces of all its reels and batches. */
    public long quantity() {
        return holdings.stream().mapToLong(Holding::quantity).sum();
    }
}
