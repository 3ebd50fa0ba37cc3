package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The table {@code feed_position}: how far each feed was read, by whom, and what stopped it. A replica reads a feed
 * only while it holds the claim; moving on checks claim and old position again, so that a replica that lost its claim
 * unnoticed rolls back instead of doing the work twice.
 */
final class FeedPositions {
    private final JdbcClient jdbc;

    FeedPositions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Takes or keeps the claim on a feed for a while; empty if another replica has it. */
    Optional<Claimed> claim(String source, String replica, Duration lease) {
        jdbc.sql("INSERT INTO feed_position (source) VALUES (:source) ON CONFLICT DO NOTHING")
                .param("source", source)
                .update();
        return jdbc.sql("""
                UPDATE feed_position
                SET claimed_by = :replica, claimed_until = now() + make_interval(secs => :lease)
                WHERE source = :source
                  AND (claimed_by IS NULL OR claimed_by = :replica OR claimed_until < now())
                RETURNING position, stopped_at IS NOT NULL AS stopped
                """)
                .param("source", source)
                .param("replica", replica)
                .param("lease", lease.toMillis() / 1000.0)
                .query((row, n) -> new Claimed(row.getLong("position"), row.getBoolean("stopped")))
                .optional();
    }

    /** Gives the claim back, so that another replica need not wait for it to run out. */
    void release(String source, String replica) {
        jdbc.sql("""
                UPDATE feed_position SET claimed_by = NULL, claimed_until = NULL
                WHERE source = :source AND claimed_by = :replica
                """).param("source", source).param("replica", replica).update();
    }

    /**
     * Locks the position at the start of a transaction, so that no other replica can claim the feed until its end,
     * however long the work takes.
     *
     * @throws LostClaim if the position or the claim is not what this replica believes
     */
    void hold(String source, String replica, long position) {
        boolean held = jdbc.sql("""
                SELECT position FROM feed_position
                WHERE source = :source AND position = :position AND claimed_by = :replica AND stopped_at IS NULL
                FOR UPDATE
                """)
                .param("source", source)
                .param("position", position)
                .param("replica", replica)
                .query(Long.class)
                .optional()
                .isPresent();
        if (!held) {
            throw new LostClaim("%s is no longer read by %s from position %d.".formatted(source, replica, position));
        }
    }

    /**
     * Moves on, in the transaction of what was done with the events and after {@link #hold}; the claim is renewed.
     */
    void advance(String source, long to, Tally tally, Duration lease) {
        jdbc.sql("""
                UPDATE feed_position
                SET position = :to, applied = applied + :applied, skipped = skipped + :skipped,
                    repeated = repeated + :repeated, retrying_since = NULL, retrying_why = NULL,
                    claimed_until = clock_timestamp() + make_interval(secs => :lease)
                WHERE source = :source
                """)
                .param("source", source)
                .param("to", to)
                .param("applied", tally.applied())
                .param("skipped", tally.skipped())
                .param("repeated", tally.repeated())
                .param("lease", lease.toMillis() / 1000.0)
                .update();
    }

    /** Counts an event of a type nobody knows, in the transaction that moves past it. */
    void skip(String source, String type, long position) {
        jdbc.sql("""
                INSERT INTO feed_skipped_type AS known (source, type, skipped, first_position, last_position)
                VALUES (:source, :type, 1, :position, :position)
                ON CONFLICT (source, type) DO UPDATE SET skipped = known.skipped + 1, last_position = :position
                """)
                .param("source", source)
                .param("type", type)
                .param("position", position)
                .update();
    }

    /** The publisher answered; it has published up to this position. */
    void answered(String source, long head) {
        jdbc.sql("""
                UPDATE feed_position SET head = :head, read_at = now(), retrying_since = NULL, retrying_why = NULL
                WHERE source = :source
                """).param("source", source).param("head", head).update();
    }

    /** A passing failure: shown, and tried again. */
    void retrying(String source, String why) {
        jdbc.sql("""
                UPDATE feed_position SET retrying_since = coalesce(retrying_since, now()), retrying_why = :why
                WHERE source = :source
                """).param("source", source).param("why", why).update();
    }

    /** A failure that needs a person: the feed stays where it is until it is resumed. */
    void stop(String source, String replica, Arrival arrival, String why) {
        jdbc.sql("""
                UPDATE feed_position
                SET stopped_at = now(), stopped_why = :why, stopped_event_id = :event, stopped_position = :position,
                    retrying_since = NULL, retrying_why = NULL
                WHERE source = :source AND claimed_by = :replica AND stopped_at IS NULL
                """)
                .param("source", source)
                .param("replica", replica)
                .param("why", why)
                .param(
                        "event",
                        arrival.name().substring(0, Math.min(200, arrival.name().length())))
                .param("position", arrival.position())
                .update();
    }

    /** What the claim holder finds. */
    record Claimed(long position, boolean stopped) {}

    /** What became of the events of one transaction. */
    record Tally(long applied, long skipped, long repeated) {}

    /** Another replica has taken over; the transaction must not be kept. */
    static final class LostClaim extends RuntimeException {
        private static final long serialVersionUID = 1L;

        LostClaim(String message) {
            super(message);
        }
    }
}
