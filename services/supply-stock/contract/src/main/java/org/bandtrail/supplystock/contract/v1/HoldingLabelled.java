package org.bandtrail.supplystock.contract.v1;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A delivery was recorded and this is what the label of one of its reels or batches says.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id the reel's or batch's identity
 * @param materialCode the supply item
 * @param lot the maker's lot in upper case, null if none is stated
 * @param expiresOn last day the adhesive is good for, null if none is stated
 * @param happenedAt when it arrived
 * @param recordedAt when supply-stock learnt of it
 * @param by who received it
 */
public record HoldingLabelled(
        String holding,
        String id,
        String materialCode,
        @Nullable String lot,
        @Nullable LocalDate expiresOn,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "supply-stock.holding-labelled.v1";

    /** What the event is about: the reel or batch. Order is kept per subject. */
    public String subject() {
        return holding + "/" + id;
    }
}
