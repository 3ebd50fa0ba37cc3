package org.bandtrail.supplystock.writedowns;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The write-downs, newest first. */
@Repository
public class WriteDowns {
    private final JdbcClient jdbc;

    WriteDowns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One write-down.
     *
     * @param position place in the order of the books; pages go by it
     * @param holding {@code reel} or {@code batch}
     */
    public record Row(
            long position,
            String holding,
            String id,
            @Nullable String materialCode,
            Money amount,
            String reason,
            String byPerson,
            Instant happenedAt) {}

    /**
     * One page.
     *
     * @param before position before which the page begins, or null for the newest
     */
    public List<Row> page(@Nullable Long before, int limit) {
        return jdbc.sql("""
                        SELECT w.*, coalesce(r.material, b.material) AS material FROM write_down w
                        LEFT JOIN reel_balance r ON w.holding = 'reel' AND r.id = w.id
                        LEFT JOIN batch_balance b ON w.holding = 'batch' AND b.id = w.id
                        WHERE :before::bigint IS NULL OR w.position < :before
                        ORDER BY w.position DESC LIMIT :limit""")
                .param("before", before)
                .param("limit", limit)
                .query((row, number) -> new Row(
                        row.getLong("position"),
                        row.getString("holding"),
                        row.getString("id"),
                        row.getString("material"),
                        Money.of(row.getLong("amount_minor"), row.getString("currency")),
                        row.getString("reason"),
                        row.getString("by_person"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant()))
                .list();
    }
}
