package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.List;
import org.springframework.context.SmartLifecycle;

/** Starts and stops the readers of all foreign feeds with the service, and ends the waiting of those who read us. */
final class FeedReaders implements SmartLifecycle {
    private static final Duration PATIENCE = Duration.ofSeconds(8);

    private final List<FeedLoop> loops;
    private final OutboxBell bell;
    private boolean running;

    FeedReaders(List<FeedReader> readers, OutboxBell bell) {
        this.loops = readers.stream().map(FeedLoop::new).toList();
        this.bell = bell;
    }

    @Override
    public synchronized void start() {
        loops.forEach(FeedLoop::start);
        running = true;
    }

    @Override
    public synchronized void stop() {
        bell.close();
        loops.forEach(loop -> loop.stop(PATIENCE));
        running = false;
    }

    @Override
    public synchronized boolean isRunning() {
        return running;
    }
}
