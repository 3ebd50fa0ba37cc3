package org.bandtrail.supplystock.contract.v1;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A kit keeps a reel or some pieces of a batch for itself, or keeps it no longer. What is reserved lies in the depot
 * but is not free. Each event is the whole state for its kit; the highest sequence counts.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id the reel's or batch's identity
 * @param kitId the kit
 * @param quantity millimetres of a reel or pieces of a batch, 0 if the kit keeps it no longer
 * @param until when it lapses by itself, null if the quantity is 0
 * @param sequence grows with each event about the same reel or batch
 * @param happenedAt when it happened
 * @param recordedAt when supply-stock learnt of it
 * @param by who reserved or released it
 */
public record HoldingReserved(
        String holding,
        String id,
        String kitId,
        long quantity,
        @Nullable Instant until,
        long sequence,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "supply-stock.holding-reserved.v1";

    /** What the event is about: the reel or batch. Order is kept per subject. */
    public String subject() {
        return holding + "/" + id;
    }
}
