package org.bandtrail.eventexchange.overview;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a foreign feed has been read and what holds it up.
 *
 * @param feed short name of the foreign service, for example site-installs
 * @param state reading, retrying (a passing failure, tried again by itself) or stopped (needs a person)
 * @param position last position dealt with
 * @param head highest position the publisher has told us of
 * @param lag positions still ahead; an upper bound, since some numbers are never used
 * @param applied events handed to a handler
 * @param skipped events of types that nobody here knows
 * @param repeated events that came again and changed nothing
 * @param why what holds it up, for a person; null while reading
 */
public record FeedStatus(
        String feed,
        String source,
        String state,
        long position,
        long head,
        long lag,
        long applied,
        long skipped,
        long repeated,
        @Nullable Instant readAt,
        @Nullable Instant since,
        @Nullable String why,
        @Nullable String stoppedEventId,
        @Nullable Long stoppedPosition,
        List<SkippedType> skippedTypes) {

    /** A type that was skipped, how often, and where it was seen first and last. */
    public record SkippedType(String type, long skipped, long firstPosition, long lastPosition) {}
}
