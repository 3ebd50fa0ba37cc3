package org.bandtrail.supplystock.recalls;

import java.time.Clock;
import java.time.Duration;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.traces.Traces;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Looks twice a second whether a depot has anything of a recalled lot, and has it set aside. It goes by what is there, not
 * by what happened, so it misses nothing: not a return, not an arrival, not a lot that is told late. Several replicas may
 * look at once; the second finds nothing left to move.
 */
@Component
final class RecallWatch implements SmartLifecycle {
    private static final Logger LOG = LoggerFactory.getLogger(RecallWatch.class);
    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(500);

    private final Recalls recalls;
    private final Traces traces;
    private final RecallDesk desk;
    private final Work work;
    private final Clock clock;
    private volatile boolean running;
    private @Nullable Thread thread;

    RecallWatch(Recalls recalls, Traces traces, RecallDesk desk, Work work, Clock clock) {
        this.recalls = recalls;
        this.traces = traces;
        this.desk = desk;
        this.work = work;
        this.clock = clock;
    }

    @Override
    public void start() {
        running = true;
        thread = Thread.ofVirtual().name("recall-watch").start(this::watch);
    }

    @Override
    public void stop() {
        running = false;
        Thread watching = thread;
        if (watching == null) {
            return;
        }
        watching.interrupt();
        try {
            if (!watching.join(Duration.ofSeconds(5))) {
                LOG.warn("The look at recalled goods did not end in time");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    private void watch() {
        while (running) {
            try {
                look();
            } catch (RecallRefused.NotOpen lifted) {
                LOG.debug("A recall was lifted while its goods were looked at", lifted);
            } catch (RuntimeException problem) {
                // The next look sees the same goods and tries again.
                LOG.warn("The goods of a recall could not be set aside; next look in {}", BETWEEN_LOOKS, problem);
            }
            try {
                Thread.sleep(BETWEEN_LOOKS);
            } catch (InterruptedException stopped) {
                return;
            }
        }
    }

    private void look() {
        for (RecallRow recall : recalls.open()) {
            if (!traces.inDepots(recall.lot(), recall.supplierId()).isEmpty()) {
                Occurred now = Occurred.at(clock.instant());
                work.inOneTransaction(() -> desk.setAside(
                        new RecallId(recall.recallId()),
                        recall.lot(),
                        recall.supplierId(),
                        recall.reason(),
                        new PersonId(recall.by()),
                        now));
            }
        }
    }
}
