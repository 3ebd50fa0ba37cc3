package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.List;

/**
 * The port behind which a transport carries the events of one foreign service. It promises every committed event at
 * least once and the order of each subject; it may repeat, delay, cut short or fail. A transport with several
 * partitions is one feed for each, since a feed has one position.
 */
@FunctionalInterface
public interface Feed {
    /**
     * Reads what follows a position.
     *
     * @param after last position dealt with, 0 at the beginning
     * @param limit most events to return
     * @param wait how long to wait for the first one if there is none yet
     * @throws FeedUnreachable if nothing usable came; the caller asks again later
     */
    FeedPage after(long after, int limit, Duration wait);

    /**
     * What came.
     *
     * @param head highest position the publisher knows of, for showing how far behind the reader is
     */
    record FeedPage(List<Arrival> arrivals, long head) {}

    /** The transport failed or delivered nothing usable. A passing failure: the reader asks again. */
    class FeedUnreachable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public FeedUnreachable(String message) {
            super(message);
        }

        public FeedUnreachable(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
