package org.bandtrail.supplystock.contract.v1;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A reel came into a depot; from now on crews may name it.
 *
 * @param reelId the reel's identity, as on its label
 * @param materialCode the supply item
 * @param kind {@code TAPE} or {@code MESH}
 * @param name what people call the item
 * @param widthMm width in millimetres, 0 if the register does not say
 * @param openingMm mesh opening in millimetres, null for tape
 * @param lengthMm length received in millimetres
 * @param depotId the depot
 * @param happenedAt when it arrived
 * @param recordedAt when supply-stock learnt of it
 * @param by who received it
 */
public record ReelReceived(
        String reelId,
        String materialCode,
        String kind,
        String name,
        long widthMm,
        @Nullable Long openingMm,
        long lengthMm,
        String depotId,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "supply-stock.reel-received.v1";

    /** What the event is about: the reel. Order is kept per subject. */
    public String subject() {
        return "reel/" + reelId;
    }
}
