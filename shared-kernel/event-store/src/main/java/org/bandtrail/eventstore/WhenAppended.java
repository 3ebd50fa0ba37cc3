package org.bandtrail.eventstore;

import java.util.List;

/**
 * Told of new events inside the transaction that writes them, so that what it writes commits with them. Used by a
 * service's {@code published} package for its outbox; everything that may lag behind is a {@link Projection} instead.
 */
public interface WhenAppended {
    /** Called once per work with all its events in order. An exception rolls the work back. */
    void appended(List<AppendedEvent> events);
}
