package org.bandtrail.eventstore;

import java.util.UUID;

/**
 * An event on its way into the store, inside the transaction that writes it.
 *
 * @param eventId names the event for ever
 * @param aggregate stored identifier, for example {@code reel/R-0001}
 * @param sequence 0, 1, 2 ... within the aggregate
 * @param payload the event record
 */
public record AppendedEvent(UUID eventId, String aggregate, long sequence, Object payload) {}
