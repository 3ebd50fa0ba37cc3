package org.bandtrail.supplystock.takebacks;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;

/**
 * The last move of a reel or batch as its history tells it, and whether it can still be taken back.
 *
 * @param subject the reel or batch, by its label
 * @param what the trade's word for it
 * @param quantity millimetres or pieces
 * @param recorded when the books learnt of it
 */
record LastMove(String subject, String what, Place source, Place target, long quantity, Instant recorded) {
    /** How long a move can be taken back: long enough to see the slip, too short to become a habit. Own choice. */
    static final Duration PATIENCE = Duration.ofMinutes(10);

    /** Histories keep microseconds, clocks may know more. */
    private static final Duration CLOCK_GRAIN = Duration.ofMillis(1);

    /**
     * The move that brings it back.
     *
     * @param made when the move to be taken back was recorded
     * @param now the present moment
     * @throws TakeBackRefused if something else moved it since, too much time went by, or there is no such move
     */
    StockMove opposite(Instant made, Instant now) {
        if (Duration.between(made, recorded).abs().compareTo(CLOCK_GRAIN) > 0) {
            throw new TakeBackRefused.MovedSince(this);
        }
        if (Duration.between(recorded, now).compareTo(PATIENCE) > 0) {
            throw new TakeBackRefused.TooLate(this, PATIENCE.toMinutes());
        }
        return Arrays.stream(StockMove.values())
                .filter(move -> move.word().equals(what))
                .findFirst()
                .flatMap(StockMove::opposite)
                .orElseThrow(() -> new TakeBackRefused.NoWayBack(this));
    }
}
