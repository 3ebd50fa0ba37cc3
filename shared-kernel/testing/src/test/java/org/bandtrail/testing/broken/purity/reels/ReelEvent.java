package org.bandtrail.testing.broken.purity.reels;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;

/** What happens to a reel. */
public sealed interface ReelEvent {
    /** It came in. */
    @StoredAs("reel.received")
    @Revision("1")
    record Received(long mm) implements ReelEvent {}
}
