package org.bandtrail.siteinstalls.contract.v1;

import org.jspecify.annotations.Nullable;

/**
 * Material that changed place, as the field saw it. Places are text: {@code crew:<PersonId>} for what a person carries,
 * {@code tree:<TreeId>} for what hangs on a tree.
 *
 * @param material {@code reel} or {@code batch}
 * @param id the reel's or the batch's identity
 * @param quantity millimetres of a reel, pieces of a batch; more than zero
 * @param source the place it left
 * @param target the place it came to
 * @param reusable whether this piece may go on another trunk when it comes down sound; null from a publisher that did not
 *     tell, or of a kind of device nobody described
 */
public record MaterialMove(
        String material,
        String id,
        long quantity,
        String source,
        String target,
        @Nullable Boolean reusable) {
    /** A length of tape or mesh of one reel. */
    public static final String REEL = "reel";

    /** Fasteners of one batch. */
    public static final String BATCH = "batch";

    /** A move as publishers told it before they said what may be used again. */
    public MaterialMove(String material, String id, long quantity, String source, String target) {
        this(material, id, quantity, source, target, null);
    }

    /**
     * Refuses moves that move nothing.
     *
     * @throws IllegalArgumentException naming the value
     */
    public MaterialMove {
        if (!REEL.equals(material) && !BATCH.equals(material)) {
            throw new IllegalArgumentException("Material [%s] is neither reel nor batch.".formatted(material));
        }
        if (quantity <= 0) {
            throw new IllegalArgumentException(
                    "A move of [%d] from %s %s moves nothing. Leave it out.".formatted(quantity, material, id));
        }
    }
}
