package org.bandtrail.siteinstalls.bands;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;

/**
 * A piece cut from a reel.
 *
 * @param reelId the reel
 * @param length more than zero
 */
public record Piece(ReelId reelId, Length length) {
    /**
     * Refuses pieces of no length.
     *
     * @throws IllegalArgumentException naming reel and length
     */
    public Piece {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("A piece of [%s] from reel %s is no piece. Give the length that was cut."
                    .formatted(length, reelId));
        }
    }
}
