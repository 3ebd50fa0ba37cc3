package org.bandtrail.supplystock.custody;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One step of a reel or batch into, within or out of one person's care.
 *
 * @param position of the event; step counts within it
 * @param quantity millimetres of a reel, pieces of a batch, above 0
 * @param place the other end of the move
 * @param what the trade's word, for example fitted
 * @param kitId on a handout the kit, otherwise null
 * @param measured whether the person brought it back and it was measured, so that nothing can be out after it
 */
record CustodyStep(
        long position,
        int step,
        Held held,
        Station source,
        Station target,
        long quantity,
        String place,
        String what,
        @Nullable String kitId,
        boolean measured,
        Instant happened,
        Instant recorded) {

    /**
     * A reel or batch in the care of one person.
     *
     * @param holding reel or batch
     */
    record Held(String holding, String id, String person) {
        boolean reel() {
            return holding.equals("reel");
        }
    }

    CustodyStep of(long part) {
        return new CustodyStep(
                position, step, held, source, target, part, place, what, kitId, measured, happened, recorded);
    }
}
