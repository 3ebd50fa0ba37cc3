package org.bandtrail.supplystock.takebacks;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.holdings.Place;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The last moves of reels and batches, read from their histories once these are up to date. */
@Repository
class LastMoves {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    LastMoves(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** Waits until the histories know what was stored before this call. */
    void upToDate() {
        projectors.getObject().caughtUp(PATIENCE);
    }

    /**
     * The last move; changes of cost alone are none.
     *
     * @throws TakeBackRefused.NothingMoved if there is none
     */
    LastMove ofReel(String reel) {
        return last("reel_history", reel);
    }

    /**
     * The last move of any of its pieces.
     *
     * @throws TakeBackRefused.NothingMoved if there is none
     */
    LastMove ofBatch(String batch) {
        return last("batch_history", batch);
    }

    private LastMove last(String table, String id) {
        return jdbc.sql("""
                        SELECT what, source, target, quantity, recorded_at FROM %s
                        WHERE id = ? AND source IS NOT NULL AND target IS NOT NULL
                        ORDER BY position DESC, step DESC LIMIT 1""".formatted(table))
                .param(id)
                .query((row, number) -> new LastMove(
                        id,
                        row.getString("what"),
                        Place.parse(row.getString("source")),
                        Place.parse(row.getString("target")),
                        row.getLong("quantity"),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant()))
                .optional()
                .orElseThrow(() -> new TakeBackRefused.NothingMoved(id));
    }
}
