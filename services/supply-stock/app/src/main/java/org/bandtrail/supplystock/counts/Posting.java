package org.bandtrail.supplystock.counts;

import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * One step of an approval on one reel or batch.
 *
 * @param how what is done
 * @param holding {@code reel} or {@code batch}
 * @param id identity of the reel or batch
 * @param source where the books had it, null for an adjustment
 * @param place the counted place
 * @param quantity millimetres or pieces: moved or brought back, or counted less expected for an adjustment
 * @param reason why, as somebody said
 */
public record Posting(
        How how, String holding, String id, @Nullable Place source, Place place, long quantity, String reason) {
    /** The ways a difference is posted. */
    public enum How {
        /** The books had it in another bin of the depot. */
        PUT_IN_BIN,
        /** The books had it with a person, who has brought it back. */
        BROUGHT_BACK,
        /** There is more or less of it than the books knew. */
        ADJUSTED
    }
}
