package org.bandtrail.siteinstalls.depotstock;

import java.time.Instant;
import org.bandtrail.kernel.BatchId;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of a batch in a depot that may be used; what is set aside does not count.
 *
 * @param batchId the batch
 * @param bin where most of them lie, null if loose
 * @param pieces there now, above zero
 * @param reserved pieces of these that kits keep
 * @param receivedAt when it came
 */
public record BatchThere(BatchId batchId, @Nullable String bin, long pieces, long reserved, Instant receivedAt) {

    /** Pieces no kit keeps. */
    public long free() {
        return Math.max(0, pieces - reserved);
    }
}
