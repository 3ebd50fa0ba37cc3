package org.bandtrail.eventstore;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.axonframework.serialization.upcasting.event.EventUpcaster;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the stored events of a service in order, a page at a time, past and present revisions alike. */
public final class EventLog {
    private final JdbcClient jdbc;
    private final AppendOrder order;
    private final StoredNameSerializer serializer;
    private final Upcasting upcasting;

    EventLog(JdbcClient jdbc, AppendOrder order, StoredNameSerializer serializer, EventUpcaster upcasters) {
        this.jdbc = jdbc;
        this.order = order;
        this.serializer = serializer;
        this.upcasting = new Upcasting(serializer, upcasters);
    }

    /** The position of the newest event that is committed now, 0 if there is none. */
    public long head() {
        return jdbc.sql("SELECT coalesce(max(global_index), 0) FROM domain_event_entry")
                .query(Long.class)
                .single();
    }

    /**
     * The events after a position, in the order of the store; none that a slower writer could still precede.
     *
     * @param storedNames which events to read; the page's end counts all events
     * @param limit at most so many positions
     */
    public Page after(long position, Collection<String> storedNames, int limit) {
        long end = order.safeEnd(position, limit);
        if (end <= position) {
            return new Page(List.of(), position);
        }
        List<StoredEvent> events = jdbc.sql("""
                        SELECT global_index, event_identifier, aggregate_identifier, sequence_number, payload_type,
                               payload_revision, payload
                        FROM domain_event_entry
                        WHERE global_index > ? AND global_index <= ? AND payload_type = ANY (?)
                        ORDER BY global_index""")
                .params(position, end, storedNames.toArray(String[]::new))
                .query((row, number) -> new StoredEvent(
                        row.getLong(1),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getLong(4),
                        upcasting.read(row.getString(5), row.getString(6), row.getBytes(7))))
                .list();
        return new Page(events, end);
    }

    /** Events up to and including a position. */
    public record Page(List<StoredEvent> events, long end) {}
}
