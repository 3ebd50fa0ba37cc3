package org.bandtrail.supplystock.contract.v1;

import java.time.Instant;
import java.util.List;

/**
 * A kit went into a person's custody.
 *
 * @param kitId the kit's identity
 * @param depotId where it came from
 * @param crewId the crew it is for
 * @param personId who has custody now
 * @param reels whole reels, as far as they were in the depot
 * @param batches pieces of batches
 * @param happenedAt when it was handed out
 * @param recordedAt when supply-stock learnt of it
 * @param by who handed it out
 */
public record KitHandedOut(
        String kitId,
        String depotId,
        String crewId,
        String personId,
        List<ReelInKit> reels,
        List<BatchInKit> batches,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "supply-stock.kit-handed-out.v1";

    /** Keeps its own copies of the lines. */
    public KitHandedOut {
        reels = List.copyOf(reels);
        batches = List.copyOf(batches);
    }

    /** What the event is about: the kit. Order is kept per subject. */
    public String subject() {
        return "kit/" + kitId;
    }

    /** @param lengthMm what was on the reel in millimetres */
    public record ReelInKit(String reelId, String materialCode, String kind, long lengthMm) {}

    /** @param pieces how many of the batch */
    public record BatchInKit(String batchId, String materialCode, long pieces) {}
}
