package org.bandtrail.eventexchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The part of a page that may be dealt with: in order, without repeats, and without a hole. What a transport shuffled
 * is put in order; what it repeated is left out; at what it lost the chain ends, and the rest is asked for again.
 *
 * @param links the events to deal with, in order
 * @param repeated how many events of the page were dealt with before, or came twice
 * @param broken whether the page shows that an event was lost on the way
 */
record FeedChain(List<Arrival> links, long repeated, boolean broken) {

    /** Builds the chain that continues from a position. */
    static FeedChain from(long position, List<Arrival> page) {
        List<Arrival> ordered = new ArrayList<>(page);
        ordered.sort(Comparator.comparingLong(Arrival::position));
        List<Arrival> links = new ArrayList<>();
        long reached = position;
        long repeated = 0;
        for (Arrival arrival : ordered) {
            if (arrival.position() <= reached) {
                repeated++;
            } else if (arrival.follows() <= reached) {
                links.add(arrival);
                reached = arrival.position();
            } else {
                return new FeedChain(links, repeated, true);
            }
        }
        return new FeedChain(links, repeated, false);
    }
}
