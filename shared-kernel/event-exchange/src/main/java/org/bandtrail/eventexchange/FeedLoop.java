package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.bandtrail.eventexchange.FeedReader.Step;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Repeats the steps of one reader on a virtual thread, with a pause that grows while it fails. */
final class FeedLoop {
    private static final Logger LOG = LoggerFactory.getLogger(FeedLoop.class);
    /** A publisher that answers "nothing" without waiting must not make this loop spin. */
    private static final Duration NOTHING_NEW_PAUSE = Duration.ofMillis(100);
    /** How soon a resumed feed is noticed. */
    private static final Duration LOOK_FOR_RESUME = Duration.ofMillis(500);

    private static final int MOST_DOUBLINGS = 16;

    private final FeedReader reader;
    private final CountDownLatch ending = new CountDownLatch(1);
    private @Nullable Thread thread;

    FeedLoop(FeedReader reader) {
        this.reader = reader;
    }

    synchronized void start() {
        if (thread == null) {
            thread = Thread.ofVirtual().name("feed " + reader.source()).start(this::loop);
        }
    }

    /** Ends after the step at hand and gives the claim back; waits for that at most the given time. */
    synchronized void stop(Duration atMost) {
        ending.countDown();
        Thread running = thread;
        if (running == null) {
            return;
        }
        try {
            if (!running.join(atMost)) {
                LOG.warn("{} is still busy; its claim runs out by itself", reader.source());
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void loop() {
        int failures = 0;
        while (ending.getCount() > 0) {
            try {
                pauseFor(after(reader.step()));
                failures = 0;
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                return;
            } catch (RuntimeException | Error failure) {
                note(failure, failures);
                pauseAfter(failures);
                failures++;
            }
        }
        release();
    }

    private Duration after(Step step) {
        return switch (step) {
            case MOVED -> Duration.ZERO;
            case NOTHING_NEW -> NOTHING_NEW_PAUSE;
            case STOPPED -> LOOK_FOR_RESUME;
            case NOT_OURS -> reader.pace().shortestPause().multipliedBy(4);
        };
    }

    /** A pause that doubles with each failure in a row, up to the longest. */
    private void pauseAfter(int earlierFailures) {
        Duration longest = reader.pace().longestPause();
        Duration pause = reader.pace().shortestPause().multipliedBy(1L << Math.min(earlierFailures, MOST_DOUBLINGS));
        try {
            pauseFor(pause.compareTo(longest) > 0 ? longest : pause);
        } catch (InterruptedException interrupted) {
            ending.countDown();
            Thread.currentThread().interrupt();
        }
    }

    private void pauseFor(Duration pause) throws InterruptedException {
        if (pause.isPositive() && ending.await(pause.toMillis(), TimeUnit.MILLISECONDS)) {
            LOG.debug("{} ends", reader.source());
        }
    }

    private void note(Throwable failure, int earlier) {
        try {
            reader.noteRetry(failure, earlier);
        } catch (RuntimeException unreachable) {
            LOG.warn("{}: the database cannot be reached to note it", reader.source(), unreachable);
        }
    }

    private void release() {
        try {
            reader.release();
        } catch (RuntimeException unreachable) {
            LOG.info("{}: the claim could not be given back and runs out by itself", reader.source(), unreachable);
        }
    }
}
