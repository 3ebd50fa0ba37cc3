package org.bandtrail.eventexchange;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.AppendOrder;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The outbox read as pages, in commit-safe order (see {@link AppendOrder}), for whatever transport carries it.
 */
public final class OutboxPages {
    /** How often the table is looked at while waiting for what another replica publishes. */
    private static final Duration LOOK_AGAIN = Duration.ofMillis(400);

    private final JdbcClient jdbc;
    private final AppendOrder order;
    private final OutboxBell bell;
    private final String source;

    /**
     * Reads the outbox of one service.
     *
     * @param order of the table {@code outbox}
     * @param source how this service is named in its envelopes, for example {@code /bandtrail/supply-stock}
     */
    public OutboxPages(JdbcClient jdbc, AppendOrder order, OutboxBell bell, String source) {
        this.jdbc = jdbc;
        this.order = order;
        this.bell = bell;
        this.source = source;
    }

    /** Returns the events after a position, in order, at most as many as the limit. */
    public List<Arrival.Readable> after(long after, int limit) {
        long end = order.safeEnd(after, limit);
        if (end <= after) {
            return List.of();
        }
        List<Arrival.Readable> page = new ArrayList<>();
        long follows = after;
        for (Stored row : rows(after, end, limit)) {
            page.add(new Arrival.Readable(row.position(), follows, row.envelope()));
            follows = row.position();
        }
        return page;
    }

    /**
     * As {@link #after(long, int)}, but waits for the first event if there is none yet.
     *
     * @throws InterruptedException if the waiting thread is asked to end
     */
    public List<Arrival.Readable> after(long after, int limit, Duration wait) throws InterruptedException {
        long deadline = System.nanoTime() + wait.toNanos();
        while (true) {
            long rings = bell.rings();
            List<Arrival.Readable> page = after(after, limit);
            Duration left = Duration.ofNanos(deadline - System.nanoTime());
            if (!page.isEmpty() || !left.isPositive() || bell.closed()) {
                return page;
            }
            bell.await(rings, left.compareTo(LOOK_AGAIN) < 0 ? left : LOOK_AGAIN);
        }
    }

    /** The highest position published so far. */
    public long head() {
        return jdbc.sql("SELECT coalesce(max(position), 0) FROM outbox")
                .query(Long.class)
                .single();
    }

    /** A gap that has filled up meanwhile may make more rows than asked for; those beyond the limit come next time. */
    private List<Stored> rows(long after, long end, int limit) {
        return jdbc.sql("""
                SELECT position, event_id, type, subject, happened_at, data FROM outbox
                WHERE position > :after AND position <= :end ORDER BY position LIMIT :limit
                """)
                .param("after", after)
                .param("end", end)
                .param("limit", limit)
                .query(this::stored)
                .list();
    }

    private Stored stored(ResultSet row, int rowNumber) throws SQLException {
        Envelope envelope = new Envelope(
                row.getString("event_id"),
                source,
                row.getString("type"),
                row.getString("subject"),
                row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                ContractJson.tree(row.getString("data")));
        return new Stored(row.getLong("position"), envelope);
    }

    private record Stored(long position, Envelope envelope) {}
}
