package org.bandtrail.siteinstalls.contract.v1;

/**
 * Material that changed place, as the field saw it. Places are text: {@code crew:<PersonId>} for what a person carries,
 * {@code tree:<TreeId>} for what hangs on a tree.
 *
 * @param material {@code reel} or {@code batch}
 * @param id the reel's or the batch's identity
 * @param quantity millimetres of a reel, pieces of a batch; more than zero
 * @param source the place it left
 * @param target the place it came to
 */
public record MaterialMove(String material, String id, long quantity, String source, String target) {
    /** A length of tape or mesh of one reel. */
    public static final String REEL = "reel";

    /** Fasteners of one batch. */
    public static final String BATCH = "batch";

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
