package org.bandtrail.supplystock.causes;

import java.time.Duration;
import java.time.Instant;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * One move as the books were told it.
 *
 * @param position of its event in the store; the moves of one event share it
 * @param holding identity of the reel or batch
 * @param kind TAPE, MESH or FASTENER, null while its receipt is not in the books
 * @param what the trade's word, for example {@code fitted}
 * @param fact what told it, for example {@code band B-0001}, or null
 * @param quantity millimetres or pieces, above zero
 * @param happened when it was done, as the teller says
 * @param recorded when the first service learnt of it
 */
public record Told(
        long position,
        String holding,
        @Nullable String kind,
        String what,
        @Nullable String fact,
        Place source,
        Place target,
        long quantity,
        Instant happened,
        Instant recorded) {
    /** How long the books were behind. */
    Duration delay() {
        return Duration.between(happened, recorded);
    }

    /** Whether both happened within this time of each other. */
    boolean near(Told other, Duration within) {
        return Duration.between(happened, other.happened).abs().compareTo(within) <= 0;
    }
}
