package org.bandtrail.eventstore;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.jspecify.annotations.Nullable;
import org.springframework.context.SmartLifecycle;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** All projections of a service: starts and stops them, waits for them, and rebuilds one while people go on reading. */
public final class Projectors implements SmartLifecycle {
    private static final int REBUILD_PAGE = 5_000;

    /** How long all projections together may take to finish their page when the service stops. */
    private static final Duration GRACE = Duration.ofSeconds(5);

    private final List<Projector> projectors;
    private final SharedLook sharedLook;
    private final List<Thread> threads = new ArrayList<>();
    private final EventLog log;
    private final TokenStore tokens;
    private final TransactionTemplate transactions;
    private final JdbcClient jdbc;
    private volatile boolean running;

    Projectors(
            List<Projector> projectors,
            SharedLook sharedLook,
            EventLog log,
            TokenStore tokens,
            TransactionTemplate transactions,
            JdbcClient jdbc) {
        this.projectors = List.copyOf(projectors);
        this.sharedLook = sharedLook;
        this.log = log;
        this.tokens = tokens;
        this.transactions = transactions;
        this.jdbc = jdbc;
    }

    @Override
    public void start() {
        running = true;
        for (Projector projector : projectors) {
            threads.add(
                    Thread.ofVirtual().name("projection-" + projector.name()).start(projector));
        }
        threads.add(Thread.ofVirtual().name("projections").start(sharedLook));
    }

    @Override
    public void stop() {
        running = false;
        sharedLook.stop();
        projectors.forEach(Projector::stop);
        long end = System.nanoTime() + GRACE.toNanos();
        try {
            for (Thread thread : threads) {
                if (!thread.join(Duration.ofNanos(Math.max(0, end - System.nanoTime())))) {
                    thread.interrupt(); // it waits for a database that is gone, its transaction is void either way
                }
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return;
        }
        threads.clear();
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    /** Tells the projections that there is news, so that they need not wait for their next look. */
    public void wake() {
        sharedLook.wake();
    }

    /**
     * Waits until all projections have seen everything that is committed now.
     *
     * @return false if that took longer than the patience
     */
    public boolean caughtUp(Duration patience) {
        long head = log.head();
        long end = System.nanoTime() + patience.toNanos();
        wake();
        while (projectors.stream().anyMatch(projector -> projector.position() < head)) {
            if (System.nanoTime() > end || Thread.currentThread().isInterrupted()) {
                return false;
            }
            java.util.concurrent.locks.LockSupport.parkNanos(2_000_000);
        }
        return true;
    }

    /** Where each projection stands. */
    public List<Standing> standing() {
        long head = log.head();
        return projectors.stream()
                .map(each -> new Standing(each.name(), each.position(), head, each.failure()))
                .toList();
    }

    /**
     * Builds the tables of a projection again from the first event, beside the old ones, and swaps them in one
     * transaction. Readers see the old rows until then; commands go on.
     *
     * @throws IllegalArgumentException if no projection has this name
     */
    public void rebuild(String name) {
        Projector projector = projectors.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Projection [%s] does not exist. There are: %s."
                        .formatted(
                                name, projectors.stream().map(Projector::name).toList())));
        new Rebuild(projector, log, tokens, transactions, jdbc, REBUILD_PAGE).run();
        wake();
    }

    /**
     * @param name projection
     * @param position last position it has applied
     * @param head last position in the store
     * @param failure why it stands still, or null
     */
    public record Standing(
            String name, long position, long head, @Nullable String failure) {}
}
