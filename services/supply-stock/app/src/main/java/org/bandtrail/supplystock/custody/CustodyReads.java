package org.bandtrail.supplystock.custody;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is in people's care, now or at any moment. */
@Repository
class CustodyReads {
    private final JdbcClient jdbc;

    CustodyReads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of what people had in their care, by person, then reel or batch.
     *
     * @param people only these people, or everybody if empty
     * @param at as it was at this moment
     * @param knownAt as the books knew it at this moment
     * @param after key of the last row of the page before, empty for the first page
     */
    List<CustodyRow> page(List<String> people, Instant at, Instant knownAt, String after, int limit) {
        return jdbc.sql("""
            SELECT c.*, coalesce(r.material, b.material) AS material, coalesce(r.kind, b.kind) AS kind
            FROM (SELECT s.person_id, s.holding, s.id,
                      sum(CASE WHEN s.target = 'with-person' THEN s.quantity ELSE 0 END
                        - CASE WHEN s.source = 'with-person' THEN s.quantity ELSE 0 END) AS with_person,
                      sum(CASE WHEN s.target = 'missing' THEN s.quantity ELSE 0 END
                        - CASE WHEN s.source = 'missing' THEN s.quantity ELSE 0 END) AS missing,
                      max(s.happened_at) FILTER (WHERE s.kit_id IS NOT NULL) AS handed_out_at,
                      (array_agg(s.kit_id ORDER BY s.happened_at DESC, s.position DESC)
                         FILTER (WHERE s.kit_id IS NOT NULL))[1] AS kit_id,
                      max(s.happened_at) AS moved_at
                  FROM custody_step s
                  WHERE (cardinality(:people::varchar[]) = 0 OR s.person_id = ANY (:people))
                    AND s.happened_at <= :at AND s.recorded_at <= :knownAt
                    AND (s.person_id || ' ' || s.holding || ' ' || s.id) COLLATE "C" > :after
                  GROUP BY s.person_id, s.holding, s.id) c
            LEFT JOIN reel_balance r ON c.holding = 'reel' AND r.id = c.id
            LEFT JOIN batch_balance b ON c.holding = 'batch' AND b.id = c.id
            WHERE c.with_person <> 0 OR c.missing <> 0
            ORDER BY (c.person_id || ' ' || c.holding || ' ' || c.id) COLLATE "C" LIMIT :limit\
            """)
                .param("people", people.toArray(String[]::new))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("knownAt", knownAt.atOffset(ZoneOffset.UTC))
                .param("after", after)
                .param("limit", limit)
                .query(CustodyReads::row)
                .list();
    }

    /**
     * One page of what people have in their care now, from the balances by place, so that the length of the history
     * does not matter.
     *
     * @param people only these people, or everybody if empty
     * @param after key of the last row of the page before, empty for the first page
     */
    List<CustodyRow> now(List<String> people, String after, int limit) {
        return jdbc.sql("""
            SELECT c.*, coalesce(r.material, b.material) AS material, coalesce(r.kind, b.kind) AS kind,
                   k.kit_id, k.happened_at AS handed_out_at,
                   coalesce(r.last_moved_at, b.last_moved_at) AS moved_at
            FROM (SELECT p.place_id AS person_id, p.holding, p.id,
                      coalesce(sum(p.quantity) FILTER (WHERE p.place_kind = 'crew'), 0) AS with_person,
                      coalesce(sum(p.quantity) FILTER (WHERE p.place_kind = 'missing'), 0) AS missing
                  FROM (SELECT 'reel' AS holding, id, place_kind, place_id, quantity FROM reel_place
                         WHERE place_kind IN ('crew', 'missing') AND quantity <> 0
                        UNION ALL
                        SELECT 'batch', id, place_kind, place_id, quantity FROM batch_place
                         WHERE place_kind IN ('crew', 'missing') AND quantity <> 0) p
                  WHERE (cardinality(:people::varchar[]) = 0 OR p.place_id = ANY (:people))
                    AND (p.place_id || ' ' || p.holding || ' ' || p.id) COLLATE "C" > :after
                  GROUP BY p.place_id, p.holding, p.id
                  ORDER BY (p.place_id || ' ' || p.holding || ' ' || p.id) COLLATE "C" LIMIT :limit) c
            LEFT JOIN reel_balance r ON c.holding = 'reel' AND r.id = c.id
            LEFT JOIN batch_balance b ON c.holding = 'batch' AND b.id = c.id
            LEFT JOIN LATERAL (SELECT s.kit_id, s.happened_at FROM custody_step s
                  WHERE s.holding = c.holding AND s.id = c.id AND s.person_id = c.person_id
                    AND s.kit_id IS NOT NULL
                  ORDER BY s.happened_at DESC, s.position DESC LIMIT 1) k ON true
            ORDER BY (c.person_id || ' ' || c.holding || ' ' || c.id) COLLATE "C"
            """)
                .param("people", people.toArray(String[]::new))
                .param("after", after)
                .param("limit", limit)
                .query(CustodyReads::row)
                .list();
    }

    private static CustodyRow row(ResultSet row, int number) throws SQLException {
        return new CustodyRow(
                row.getString("person_id"),
                row.getString("holding"),
                row.getString("id"),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("with_person"),
                row.getLong("missing"),
                row.getString("kit_id"),
                instant(row, "handed_out_at"),
                moment(row, "moved_at"));
    }

    /** Who was in a crew at a moment, as the books knew it at another; nobody if the crew was not formed by then. */
    List<String> peopleOf(String crew, Instant at, Instant knownAt) {
        return jdbc.sql("""
            SELECT people FROM custody_crew
            WHERE crew_id = ? AND happened_at <= ? AND recorded_at <= ?
            ORDER BY happened_at DESC, position DESC LIMIT 1\
            """)
                .params(crew, at.atOffset(ZoneOffset.UTC), knownAt.atOffset(ZoneOffset.UTC))
                .query((row, number) -> List.of((String[]) row.getArray(1).getArray()))
                .optional()
                .orElse(List.of());
    }

    static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
