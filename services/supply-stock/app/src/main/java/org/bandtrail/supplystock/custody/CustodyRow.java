package org.bandtrail.supplystock.custody;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What one person had of one reel or batch. Quantities are millimetres of a reel, pieces of a batch.
 *
 * @param holding reel or batch
 * @param withPerson in their care; negative if the field used more than the books knew
 * @param missing not brought back and not explained; negative if more came back than the books knew
 * @param kitId the kit it last went out with, or null if the books know of none
 * @param movedAt when it last moved
 */
record CustodyRow(
        String personId,
        String holding,
        String id,
        @Nullable String materialCode,
        @Nullable String kind,
        long withPerson,
        long missing,
        @Nullable String kitId,
        @Nullable Instant handedOutAt,
        Instant movedAt) {

    /** Orders the rows and is the cursor of the next page. */
    String key() {
        return personId + " " + holding + " " + id;
    }
}
