package org.bandtrail.eventstore;

/**
 * One event as read from the store, in the order of the store.
 *
 * @param position place in the store's order; grows, with gaps
 * @param eventId names the event for ever
 * @param aggregate stored identifier, for example {@code reel/R-0001}
 * @param sequence 0, 1, 2 ... within the aggregate
 * @param payload the event record
 */
public record StoredEvent(long position, java.util.UUID eventId, String aggregate, long sequence, Object payload) {}
