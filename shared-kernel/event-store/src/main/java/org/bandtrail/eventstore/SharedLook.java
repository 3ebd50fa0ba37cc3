package org.bandtrail.eventstore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * One look at the news for all projections that stand near the head of the store: events are read and parsed once, and
 * one transaction takes all of them one page further, instead of one transaction for each. A projection that is far
 * behind, or that failed, steps alone ({@link Projector}) until it has caught up, so none stops the others.
 */
final class SharedLook implements Runnable {
    private static final Logger LOG = LoggerFactory.getLogger(SharedLook.class);
    private static final int PAGE = 2_000;
    private static final long IDLE_MILLIS = 200;

    /** Under load a look gathers what came meanwhile: one transaction for many events instead of one for each. */
    private static final long BETWEEN_LOOKS_MILLIS = 50;

    private final List<Projector> projectors;
    private final EventLog log;
    private final Claims claims;
    private final TransactionTemplate transactions;
    private final Bell bell = new Bell();
    private volatile boolean running = true;

    SharedLook(List<Projector> projectors, EventLog log, Claims claims, TransactionTemplate transactions) {
        this.projectors = List.copyOf(projectors);
        this.log = log;
        this.claims = claims;
        this.transactions = transactions;
    }

    void wake() {
        bell.ring();
    }

    void stop() {
        running = false;
        bell.ring();
    }

    @Override
    public void run() {
        while (running) {
            long looked = System.nanoTime();
            if (!look()) {
                if (!bell.await(IDLE_MILLIS)) {
                    return;
                }
                Bell.pause(BETWEEN_LOOKS_MILLIS, looked);
            }
        }
    }

    /** Takes all who stand near the head one page further; tells whether there may be more. */
    private boolean look() {
        List<Projector> together =
                projectors.stream().filter(Projector::isTogether).toList();
        try {
            return !together.isEmpty() && step(together);
        } catch (RuntimeException problem) {
            if (!running) {
                return false;
            }
            // Whose problem it is shows when each goes alone; that one then says so and waits longer and longer.
            LOG.warn("A look for {} projections failed; each goes on alone", together.size(), problem);
            together.forEach(Projector::goAlone);
            return false;
        }
    }

    private boolean step(List<Projector> together) {
        long lowest = together.stream().mapToLong(Projector::position).min().orElseThrow();
        if (log.head() <= lowest) {
            return false;
        }
        Moved moved = transactions.execute(status -> move(together));
        if (moved == null) {
            return false;
        }
        // Only now, after the commit: whoever waits for the position must find the rows.
        moved.behind().forEach(projector -> projector.standsAt(moved.to()));
        moved.lost().forEach(Projector::goAlone);
        return moved.to() - moved.from() >= PAGE;
    }

    private Moved move(List<Projector> together) {
        Map<String, Long> positions =
                claims.lock(together.stream().map(Projector::name).toList());
        List<Projector> lost = together.stream()
                .filter(each -> !positions.containsKey(each.name()))
                .toList();
        long from = positions.values().stream().mapToLong(Long::longValue).min().orElse(0);
        if (positions.isEmpty()) {
            return new Moved(0, 0, List.of(), lost);
        }
        TreeSet<String> names = new TreeSet<>();
        together.forEach(projector -> names.addAll(projector.storedNames()));
        EventLog.Page page = log.after(from, names, PAGE);
        List<Projector> behind = new ArrayList<>();
        for (Projector projector : together) {
            Long position = positions.get(projector.name());
            if (position != null && position < page.end()) {
                projector.apply(page.events(), position);
                behind.add(projector);
            }
        }
        if (!behind.isEmpty()) {
            claims.move(behind.stream().map(Projector::name).toList(), page.end());
        }
        return new Moved(from, page.end(), behind, lost);
    }

    private record Moved(long from, long to, List<Projector> behind, List<Projector> lost) {}
}
