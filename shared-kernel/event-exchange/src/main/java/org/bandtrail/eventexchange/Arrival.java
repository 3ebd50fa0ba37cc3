package org.bandtrail.eventexchange;

/**
 * One event as a transport delivered it, with its place in the feed. The place is given twice over: its own position
 * and that of the event before it, so that a reader can tell a lost event from a number that was never used.
 */
public sealed interface Arrival {
    /** Place in the feed, counting up. */
    long position();

    /** Position of the event before it; for the first of a page, the position that the reader asked from. */
    long follows();

    /** What to call it when it stops a feed: the event's id, or what is known of it. */
    String name();

    /** An event that can be read. */
    record Readable(long position, long follows, Envelope envelope) implements Arrival {
        @Override
        public String name() {
            return envelope.id();
        }
    }

    /** An event whose place is known but which is not a CloudEvent of ours. */
    record Unreadable(long position, long follows, String name, String why) implements Arrival {}
}
