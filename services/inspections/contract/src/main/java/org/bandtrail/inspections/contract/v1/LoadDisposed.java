package org.bandtrail.inspections.contract.v1;

import java.time.Instant;
import java.util.List;

/**
 * Waste bags left with a disposal load. One load may come as several messages, each about the bags it names: contents
 * that became known only after the bag had left follow in a further message with {@code settlesEarlier} true.
 *
 * @param loadId the load
 * @param bagIds the bags this message is about
 * @param carrier code of who took the load, never a person's name
 * @param settlesEarlier true if this message only carries contents an earlier one could not know
 * @param moves every quantity that went from a bag to the load; when a late fact shows that something was not in
 *     the bag, or left with another load, it moves back ({@code disposed:} to {@code bag:}) or over to that load
 * @param happenedAt when the load left
 * @param recordedAt when inspections learnt of it
 * @param by who told it
 */
public record LoadDisposed(
        String loadId,
        List<String> bagIds,
        String carrier,
        boolean settlesEarlier,
        List<MaterialMove> moves,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The name in the envelope. */
    public static final String TYPE = "inspections.load-disposed.v1";

    public LoadDisposed {
        bagIds = List.copyOf(bagIds);
        moves = List.copyOf(moves);
    }

    /** What the event is about: the first bag. Order is kept per subject. */
    public String subject() {
        return "bag/" + bagIds.getFirst();
    }
}
