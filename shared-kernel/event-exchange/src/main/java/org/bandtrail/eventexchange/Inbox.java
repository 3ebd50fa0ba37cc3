package org.bandtrail.eventexchange;

import org.springframework.jdbc.core.simple.JdbcClient;

/** Which foreign events were dealt with, so that one that comes again changes nothing. */
final class Inbox {
    private final JdbcClient jdbc;

    Inbox(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Notes an event in the current transaction; false if it was already noted. */
    boolean firstTime(Envelope envelope, long position) {
        return jdbc.sql("""
                        INSERT INTO inbox (source, event_id, position, type) VALUES (:source, :id, :position, :type)
                        ON CONFLICT DO NOTHING
                        """)
                        .param("source", envelope.source())
                        .param("id", envelope.id())
                        .param("position", position)
                        .param("type", envelope.type())
                        .update()
                > 0;
    }

    /**
     * Deletes the rows at or below a position. Safe as long as nobody re-reads the feed from before it: the feed's
     * position alone keeps what lies below it from being handled again.
     *
     * @return rows deleted
     */
    int prune(String source, long throughPosition) {
        return jdbc.sql("DELETE FROM inbox WHERE source = :source AND position <= :through")
                .param("source", source)
                .param("through", throughPosition)
                .update();
    }
}
