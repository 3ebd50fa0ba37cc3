package org.bandtrail.supplystock.handouts;

import java.time.Instant;
import java.util.List;

/**
 * One kit as people see it.
 *
 * @param open whether the person still has anything of it
 */
public record KitRow(
        String kitId,
        String depotId,
        String crewId,
        String personId,
        Instant handedOutAt,
        boolean open,
        List<Line> reels,
        List<Line> batches) {

    /**
     * @param kind TAPE, MESH or FASTENER
     * @param handedOut millimetres or pieces when it was handed out
     * @param stillOut what the person has of it now by the books
     */
    public record Line(String id, String materialCode, String kind, long handedOut, long stillOut) {}
}
