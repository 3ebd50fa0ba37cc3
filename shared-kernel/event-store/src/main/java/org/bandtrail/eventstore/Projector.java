package org.bandtrail.eventstore;

import java.util.List;
import org.axonframework.eventhandling.GlobalSequenceTrackingToken;
import org.axonframework.eventhandling.TrackingToken;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.axonframework.eventhandling.tokenstore.UnableToClaimTokenException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Keeps one projection up to date: reads a page, applies it and moves the position, all in one transaction. When it has
 * caught up it joins the {@link SharedLook} of all and rests until that sends it off alone again. Of several replicas
 * the one that holds the claim in the token store works; the others wait and take over when the claim expires.
 */
final class Projector implements Runnable {
    private static final Logger LOG = LoggerFactory.getLogger(Projector.class);
    private static final int PAGE = 2_000;
    private static final long LONGEST_BACKOFF_MILLIS = 10_000;

    private final Projection projection;
    private final EventLog log;
    private final TokenStore tokens;
    private final TransactionTemplate transactions;
    private final List<String> storedNames;
    private final Bell bell = new Bell();
    private volatile boolean together;
    private volatile long position = -1;
    private volatile @Nullable String failure;
    private volatile boolean running = true;

    Projector(
            Projection projection,
            EventLog log,
            TokenStore tokens,
            TransactionTemplate transactions,
            StoredNames names) {
        this.projection = projection;
        this.log = log;
        this.tokens = tokens;
        this.transactions = transactions;
        this.storedNames = projection.listensTo().stream()
                .flatMap(events -> List.of(events.getPermittedSubclasses()).stream())
                .map(event -> {
                    String name = names.nameOf(event);
                    if (name == null) {
                        throw new IllegalStateException(
                                "%s listens to %s, which no AggregateOf declares.".formatted(projection.name(), event));
                    }
                    return name;
                })
                .toList();
    }

    String name() {
        return projection.name();
    }

    Projection projection() {
        return projection;
    }

    List<String> storedNames() {
        return storedNames;
    }

    /** Position up to which this replica knows the projection to be; -1 before the first look. */
    long position() {
        return position;
    }

    /** Why it stands still, or null. */
    @Nullable
    String failure() {
        return failure;
    }

    /** Whether it has caught up and is taken further by the shared look. */
    boolean isTogether() {
        return together;
    }

    /** It is sent off to step alone until it has caught up again. */
    void goAlone() {
        together = false;
        bell.ring();
    }

    /** The shared look has committed up to here. */
    void standsAt(long committed) {
        position = committed;
    }

    /** Applies those events of a page of all that it listens to and has not seen; within the caller's transaction. */
    void apply(List<StoredEvent> ofAll, long after) {
        List<StoredEvent> own = ofAll.stream()
                .filter(event -> event.position() > after
                        && projection.listensTo().stream().anyMatch(type -> type.isInstance(event.payload())))
                .toList();
        if (!own.isEmpty()) {
            projection.apply(own);
        }
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
        long backoff = 0;
        while (running) {
            try {
                if (together) {
                    rest(LONGEST_BACKOFF_MILLIS);
                } else if (!step()) {
                    failure = null;
                    backoff = 0;
                    together = true;
                }
            } catch (UnableToClaimTokenException otherReplica) {
                rest(LONGEST_BACKOFF_MILLIS / 2);
            } catch (RuntimeException problem) {
                if (!running) {
                    return;
                }
                failure = problem.toString();
                backoff = Math.min(LONGEST_BACKOFF_MILLIS, Math.max(250, backoff * 2));
                LOG.error("Projection {} stands at position {}; next try in {} ms", name(), position, backoff, problem);
                rest(backoff);
            }
        }
    }

    /** One page; tells whether there may be more. */
    boolean step() {
        if (position >= 0 && log.head() <= position) {
            return false;
        }
        Moved moved = transactions.execute(status -> {
            long from = fetchPosition();
            EventLog.Page page = log.after(from, storedNames, PAGE);
            if (!page.events().isEmpty()) {
                projection.apply(page.events());
            }
            if (page.end() > from) {
                tokens.storeToken(new GlobalSequenceTrackingToken(page.end()), name(), 0);
            }
            return new Moved(from, page.end());
        });
        if (moved == null) {
            return false;
        }
        position = moved.to(); // only now: whoever waits for the position must find the rows
        return moved.to() - moved.from() >= PAGE;
    }

    private long fetchPosition() {
        if (tokens.fetchSegments(name()).length == 0) {
            tokens.initializeTokenSegments(name(), 1, new GlobalSequenceTrackingToken(0));
        }
        TrackingToken token = tokens.fetchToken(name(), 0);
        return token == null ? 0 : token.position().orElse(0);
    }

    private void rest(long millis) {
        if (!bell.await(millis)) {
            running = false;
        }
    }

    private record Moved(long from, long to) {}
}
