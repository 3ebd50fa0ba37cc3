package org.bandtrail.siteinstalls.bands;

import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Pieces;

/**
 * Fasteners used from a batch.
 *
 * @param batchId the batch
 * @param pieces more than zero
 */
public record Fasteners(BatchId batchId, Pieces pieces) {
    /**
     * Refuses counts of nothing.
     *
     * @throws IllegalArgumentException naming batch and count
     */
    public Fasteners {
        if (!pieces.isPositive()) {
            throw new IllegalArgumentException(
                    "[%s] of batch %s is no use of fasteners. Leave them out.".formatted(pieces, batchId));
        }
    }
}
