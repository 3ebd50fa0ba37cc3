package org.bandtrail.eventexchange.overview;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.eventexchange.overview.FeedStatus.SkippedType;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads for people how far the feeds are, and lets them resume one. */
public final class FeedStatuses {
    private final JdbcClient jdbc;

    public FeedStatuses(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All feeds this service has ever read, by name. */
    public List<FeedStatus> all() {
        return jdbc.sql("""
                SELECT source, position, head, applied, skipped, repeated, read_at, retrying_since, retrying_why,
                       stopped_at, stopped_why, stopped_event_id, stopped_position
                FROM feed_position ORDER BY source
                """).query((row, n) -> status(row)).list();
    }

    /** Lets a stopped feed try the same event again; false if it was not stopped. */
    public boolean resume(String source, String person) {
        return jdbc.sql("""
                        UPDATE feed_position
                        SET stopped_at = NULL, stopped_why = NULL, stopped_event_id = NULL, stopped_position = NULL,
                            resumed_at = now(), resumed_by = :person
                        WHERE source = :source AND stopped_at IS NOT NULL
                        """).param("source", source).param("person", person).update() > 0;
    }

    private FeedStatus status(ResultSet row) throws SQLException {
        String source = row.getString("source");
        boolean stopped = row.getString("stopped_why") != null;
        boolean retrying = row.getString("retrying_why") != null;
        long position = row.getLong("position");
        long head = row.getLong("head");
        return new FeedStatus(
                source.substring(source.lastIndexOf('/') + 1),
                source,
                stopped ? "stopped" : retrying ? "retrying" : "reading",
                position,
                head,
                Math.max(0, head - position),
                row.getLong("applied"),
                row.getLong("skipped"),
                row.getLong("repeated"),
                instant(row, "read_at"),
                instant(row, stopped ? "stopped_at" : "retrying_since"),
                row.getString(stopped ? "stopped_why" : "retrying_why"),
                row.getString("stopped_event_id"),
                row.getObject("stopped_position", Long.class),
                skippedTypes(source));
    }

    private List<SkippedType> skippedTypes(String source) {
        return jdbc.sql("""
                SELECT type, skipped, first_position, last_position FROM feed_skipped_type
                WHERE source = :source ORDER BY type
                """).param("source", source).query(SkippedType.class).list();
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
