package org.bandtrail.eventexchange;

import java.util.EnumSet;

/** The transport with a hand on it that does mischief. */
interface FeedTransport extends AutoCloseable {
    Feed feed();

    /** From now on does each of these faults now and then, about every second time. */
    void suffer(EnumSet<Fault> faults);

    /** How many faults it has done. */
    long faultsDone();

    /** Stops and starts the publishing end, in the middle of whatever it is doing. */
    void restart();

    @Override
    void close();

    /** What can happen to a page of events on its way. */
    enum Fault {
        /** An event is lost out of the middle. */
        DROP,
        /** Events come twice. */
        DUPLICATE,
        /** Events overtake one another. */
        REORDER,
        /** The page comes late. */
        SLOW,
        /** The connection breaks in the middle of the page. */
        CUT,
        /** The publisher says it cannot. */
        REFUSE,
        /** Something else answers in the publisher's place. */
        GARBAGE,
        /** An earlier page comes again. */
        STALE
    }
}
