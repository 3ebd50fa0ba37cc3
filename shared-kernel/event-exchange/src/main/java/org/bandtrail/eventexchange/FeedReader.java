package org.bandtrail.eventexchange;

import java.util.List;
import java.util.Optional;
import org.bandtrail.eventexchange.FeedPositions.Claimed;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;

/**
 * Reads one foreign feed and hands each event to its handlers, effectively once: inbox row, handlers and position are
 * kept or lost together. A page is tried as one transaction; if that fails, its events are tried one by one, so that
 * all before the one at fault are kept and the feed stops exactly there.
 *
 * <p>One step at a time; {@link FeedLoop} repeats the steps. Not safe for use by several threads.
 */
final class FeedReader {
    private static final Logger LOG = LoggerFactory.getLogger(FeedReader.class);
    private static final int LONGEST_REASON = 2000;

    private final String source;
    private final Feed feed;
    private final List<ReceivedHandler> handlers;
    private final FeedPositions positions;
    private final Inbox inbox;
    private final InOneTransaction inOneTransaction;
    private final String replica;
    private final FeedPace pace;

    FeedReader(
            String source,
            Feed feed,
            List<ReceivedHandler> handlers,
            FeedPositions positions,
            Inbox inbox,
            InOneTransaction inOneTransaction,
            String replica,
            FeedPace pace) {
        this.source = source;
        this.feed = feed;
        this.handlers = List.copyOf(handlers);
        this.positions = positions;
        this.inbox = inbox;
        this.inOneTransaction = inOneTransaction;
        this.replica = replica;
        this.pace = pace;
    }

    /**
     * Asks for one page and deals with it.
     *
     * @throws RuntimeException a passing failure, to be tried again after a pause
     */
    Step step() {
        Optional<Claimed> claimed = positions.claim(source, replica, pace.lease());
        if (claimed.isEmpty()) {
            return Step.NOT_OURS;
        }
        if (claimed.get().stopped()) {
            return Step.STOPPED;
        }
        long position = claimed.get().position();
        Feed.FeedPage page = feed.after(position, pace.pageLimit(), pace.patience());
        FeedChain chain = FeedChain.from(position, page.arrivals());
        if (chain.broken() && chain.links().isEmpty()) {
            throw new Feed.FeedUnreachable(
                    "%s lost an event after position %d on the way.".formatted(source, position));
        }
        positions.answered(source, page.head());
        return chain.links().isEmpty() ? Step.NOTHING_NEW : dealWith(position, chain);
    }

    /**
     * Notes a passing failure where people see it.
     *
     * @param earlier how many there were just before this one; only the first is worth a line in the log
     */
    void noteRetry(Throwable failure, int earlier) {
        LOG.atLevel(earlier == 0 ? Level.WARN : Level.DEBUG).log("{} will be tried again: {}", source, reason(failure));
        positions.retrying(source, reason(failure));
    }

    /** Lets another replica read. */
    void release() {
        positions.release(source, replica);
    }

    String source() {
        return source;
    }

    FeedPace pace() {
        return pace;
    }

    private Step dealWith(long position, FeedChain chain) {
        List<Arrival> links = chain.links();
        if (links.size() > 1) {
            try {
                inOneTransaction.run(() -> keep(position, links, chain.repeated()));
                return Step.MOVED;
            } catch (RuntimeException | Error failure) {
                if (PassingFailure.is(failure)) {
                    throw failure;
                }
                LOG.info("{} after {}: trying one by one, because {}", source, position, reason(failure));
            }
        }
        long reached = position;
        for (Arrival link : links) {
            if (!keepOrStop(reached, link)) {
                return Step.STOPPED;
            }
            reached = link.position();
        }
        return Step.MOVED;
    }

    private boolean keepOrStop(long position, Arrival link) {
        try {
            inOneTransaction.run(() -> keep(position, List.of(link), 0));
            return true;
        } catch (RuntimeException | Error failure) {
            if (PassingFailure.is(failure)) {
                throw failure;
            }
            LOG.error("{} stops at position {}, event {}", source, link.position(), link.name(), failure);
            positions.stop(source, replica, link, reason(failure));
            return false;
        }
    }

    private void keep(long position, List<Arrival> links, long repeatedBefore) {
        positions.hold(source, replica, position);
        long applied = 0;
        long skipped = 0;
        long repeated = repeatedBefore;
        for (Arrival link : links) {
            switch (handled(link)) {
                case APPLIED -> applied++;
                case SKIPPED -> skipped++;
                case REPEATED -> repeated++;
            }
        }
        var tally = new FeedPositions.Tally(applied, skipped, repeated);
        positions.advance(source, links.getLast().position(), tally, pace.lease());
    }

    private Handled handled(Arrival link) {
        Envelope envelope = switch (link) {
            case Arrival.Readable readable -> readable.envelope();
            case Arrival.Unreadable unreadable -> throw new UnreadableEvent(unreadable.why());
        };
        if (!source.equals(envelope.source())) {
            throw new UnreadableEvent("source [%s] in the feed of [%s].".formatted(envelope.source(), source));
        }
        List<ReceivedHandler> willing =
                handlers.stream().filter(h -> h.handles(envelope.type())).toList();
        if (willing.isEmpty()) {
            // No inbox row: a later version that knows the type may read it again.
            positions.skip(source, envelope.type(), link.position());
            return Handled.SKIPPED;
        }
        if (!inbox.firstTime(envelope, link.position())) {
            return Handled.REPEATED;
        }
        willing.forEach(handler -> handler.handle(envelope));
        return Handled.APPLIED;
    }

    private static String reason(Throwable failure) {
        String message = failure.getMessage();
        String reason = message == null || message.isBlank() ? failure.toString() : message;
        return reason.substring(0, Math.min(LONGEST_REASON, reason.length()));
    }

    /** What a step came to. */
    enum Step {
        MOVED,
        NOTHING_NEW,
        STOPPED,
        NOT_OURS
    }

    private enum Handled {
        APPLIED,
        SKIPPED,
        REPEATED
    }
}
