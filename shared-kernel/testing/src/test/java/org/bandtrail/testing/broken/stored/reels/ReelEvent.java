package org.bandtrail.testing.broken.stored.reels;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;

/** What happens to a reel. */
public sealed interface ReelEvent {
    /** It came in. */
    @StoredAs("reel.received")
    @Revision("1")
    record Received(long mm) implements ReelEvent {}

    /** Takes the name of another. */
    @StoredAs("reel.received")
    @Revision("1")
    record Issued(long mm) implements ReelEvent {}

    /** Has no name. */
    record Nameless(long mm) implements ReelEvent {}

    /** Has a name and is no record. */
    @StoredAs("reel.counted")
    @Revision("1")
    final class Counted implements ReelEvent {}
}
