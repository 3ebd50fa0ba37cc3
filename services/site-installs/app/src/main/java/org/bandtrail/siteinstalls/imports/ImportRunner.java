package org.bandtrail.siteinstalls.imports;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Goes on with imports that were begun, one page after another, in a thread of its own; also with those that a stop of
 * the service left unfinished. Of several instances one at a time has the import, by the lock on its row.
 */
@Component
final class ImportRunner implements SmartLifecycle {
    private static final Logger LOG = LoggerFactory.getLogger(ImportRunner.class);
    private static final Duration REST = Duration.ofMillis(500);
    private static final Duration AFTER_FAILURE = Duration.ofSeconds(5);
    private static final Duration LAST_PAGE = Duration.ofSeconds(20);
    private final ImportStoring storing;
    private volatile boolean running;
    private @Nullable Thread thread;

    ImportRunner(ImportStoring storing) {
        this.storing = storing;
    }

    @Override
    public synchronized void start() {
        if (!running) {
            running = true;
            thread = Thread.ofPlatform().name("tree-imports").daemon().start(this::run);
        }
    }

    private void run() {
        while (running) {
            Duration pause = REST;
            try {
                pause = storing.storeNextPage() ? Duration.ZERO : REST;
            } catch (RuntimeException failure) {
                // Nothing of the page was kept; it is tried again, and the import shows where it stands meanwhile.
                LOG.warn("A page of an import could not be stored and is tried again in {}", AFTER_FAILURE, failure);
                pause = AFTER_FAILURE;
            }
            if (running && !pause.isZero()) {
                LockSupport.parkNanos(pause.toNanos());
            }
        }
    }

    @Override
    public synchronized void stop() {
        running = false;
        Thread ending = thread;
        thread = null;
        if (ending == null) {
            return;
        }
        LockSupport.unpark(ending);
        try {
            ending.join(LAST_PAGE);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isRunning() {
        return running;
    }
}
