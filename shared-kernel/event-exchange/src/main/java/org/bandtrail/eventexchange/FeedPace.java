package org.bandtrail.eventexchange;

import java.time.Duration;

/**
 * How a feed is read.
 *
 * @param pageLimit most events in one transaction
 * @param patience how long the publisher may hold a request for what is not there yet
 * @param lease how long a claim lasts without being renewed; longer than the patience
 * @param shortestPause between two tries, doubled at each failure
 * @param longestPause limit of that, and the pause while another replica reads or the feed is stopped
 */
record FeedPace(int pageLimit, Duration patience, Duration lease, Duration shortestPause, Duration longestPause) {
    static final FeedPace USUAL = new FeedPace(
            100, Duration.ofSeconds(5), Duration.ofSeconds(20), Duration.ofMillis(250), Duration.ofSeconds(10));
}
