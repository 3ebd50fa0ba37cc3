package org.bandtrail.supplystock.setasides;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What stands aside, read from the balances and the histories. */
@Repository
class SetAsides {
    private final JdbcClient jdbc;

    SetAsides(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page, by depot and identity.
     *
     * @param depot only of this depot, or null
     * @param after key of the row after which the page begins, or null
     */
    List<SetAsideRow> page(@Nullable String depot, @Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT * FROM (%s UNION ALL %s) AS aside
                        WHERE (:depot::varchar IS NULL OR depot_id = :depot) AND (:after::varchar IS NULL OR key > :after)
                        ORDER BY key LIMIT :limit""".formatted(of("reel"), of("batch")))
                .param("depot", depot)
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new SetAsideRow(
                        row.getString("key"),
                        row.getString("holding"),
                        row.getString("id"),
                        row.getString("material"),
                        row.getString("depot_id"),
                        row.getLong("quantity"),
                        row.getString("note"),
                        row.getString("by_person"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private static String of(String prefix) {
        return """
                SELECT concat_ws(' ', p.place_id, '%1$s', p.id) COLLATE "C" AS key, '%1$s' AS holding, p.id, b.material,
                       p.place_id AS depot_id, p.quantity, h.note, h.by_person, h.happened_at
                FROM %1$s_place p JOIN %1$s_balance b ON b.id = p.id
                CROSS JOIN LATERAL (
                    SELECT note, by_person, happened_at FROM %1$s_history h
                    WHERE h.id = p.id AND h.target = 'set-aside:' || p.place_id
                    ORDER BY h.position DESC LIMIT 1) AS h
                WHERE p.place_kind = 'set-aside' AND p.quantity <> 0""".formatted(prefix);
    }
}
