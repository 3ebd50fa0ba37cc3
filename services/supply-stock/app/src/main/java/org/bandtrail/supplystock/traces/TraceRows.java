package org.bandtrail.supplystock.traces;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the rows of traces, a page at a time. */
@Repository
public class TraceRows {
    private final JdbcClient jdbc;

    TraceRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of the reels and batches, batches first, by identity.
     *
     * @param after {@code holding|id} of the last row before, empty for the first page
     */
    public List<Trace.Part> parts(TraceSubject subject, String after, int limit) {
        return jdbc.sql(TraceSql.family(subject) + TraceSql.ORIGINS + """
                        , page AS (SELECT * FROM family WHERE (holding || '|' || id) COLLATE "C" > :after
                                   ORDER BY (holding || '|' || id) COLLATE "C" LIMIT :limit)
                        SELECT f.holding, b.*, o.lot, o.delivery_id, o.purchase_id,
                               (SELECT wide.id FROM reel_place strip
                                 JOIN reel_place wide ON wide.place_kind = 'slit' AND wide.place_id = strip.place_id
                                      AND wide.quantity > 0
                                 WHERE f.holding = 'reel' AND strip.id = f.id AND strip.place_kind = 'slit'
                                   AND strip.quantity < 0 LIMIT 1) AS made_from
                        FROM page f
                        JOIN (SELECT 'reel' AS sort, * FROM reel_balance
                              UNION ALL SELECT 'batch', * FROM batch_balance) b ON b.sort = f.holding AND b.id = f.id
                        LEFT JOIN LATERAL (SELECT * FROM origin WHERE origin.holding = f.holding AND of_id = f.id
                                           ORDER BY delivered_on LIMIT 1) o ON true
                        ORDER BY (f.holding || '|' || f.id) COLLATE "C\"""")
                .param("asked", subject.id())
                .param("from", subject.supplier())
                .param("after", after)
                .param("limit", limit)
                .query(TraceRows::part)
                .list();
    }

    private static Trace.Part part(ResultSet row, int number) throws SQLException {
        return new Trace.Part(
                row.getString("sort"),
                row.getString("id"),
                row.getString("material"),
                row.getString("kind"),
                row.getString("made_from"),
                row.getString("lot"),
                row.getString("delivery_id"),
                row.getString("purchase_id"),
                row.getLong("received"),
                row.getLong("set_aside"),
                row.getLong("in_depot"),
                row.getLong("in_vehicle") + row.getLong("in_transit"),
                row.getLong("with_crew"),
                row.getLong("on_tree"),
                row.getLong("in_bag"),
                row.getLong("disposed"),
                row.getLong("slit"),
                row.getLong("missing"),
                row.getLong("written_off"));
    }

    /**
     * One page of places that hold or held something of it, by place.
     *
     * @param kind only places of this kind, or of these parted by commas; null for all
     * @param gone whether places that hold nothing of it any more are shown too
     * @param after cursor of the last row before, empty for the first page
     */
    public List<Trace.At> places(TraceSubject subject, @Nullable String kind, boolean gone, String after, int limit) {
        return jdbc.sql(TraceSql.family(subject) + TraceSql.ORIGINS + TraceSql.SPOTS + """
                        , page AS (
                            SELECT place_kind || ':' || place_id AS place, * FROM spot
                            WHERE (:kind::varchar IS NULL OR place_kind = ANY (string_to_array(:kind, ','))) AND (:gone OR quantity <> 0)
                              AND (place_kind || ':' || place_id || '|' || holding || '|' || id) COLLATE "C" > :after
                            ORDER BY (place_kind || ':' || place_id || '|' || holding || '|' || id) COLLATE "C" LIMIT :limit)
                        SELECT p.place, t.site_id, p.holding, p.id, b.material, p.quantity, h.happened_at, h.by_person,
                               (SELECT lot FROM origin WHERE origin.holding = p.holding AND of_id = p.id AND lot IS NOT NULL
                                 LIMIT 1) AS lot
                        FROM page p
                        JOIN (SELECT 'reel' AS sort, id, material FROM reel_balance
                              UNION ALL SELECT 'batch', id, material FROM batch_balance) b ON b.sort = p.holding AND b.id = p.id
                        LEFT JOIN tree_site t ON p.place_kind = 'tree' AND t.tree_id = p.place_id
                        LEFT JOIN LATERAL (
                            SELECT happened_at, by_person, position FROM reel_history
                            WHERE p.holding = 'reel' AND id = p.id AND target = p.place
                            UNION ALL
                            SELECT happened_at, by_person, position FROM batch_history
                            WHERE p.holding = 'batch' AND id = p.id AND target = p.place
                            ORDER BY position LIMIT 1) h ON true
                        ORDER BY (p.place || '|' || p.holding || '|' || p.id) COLLATE "C\"""")
                .param("asked", subject.id())
                .param("from", subject.supplier())
                .param("kind", kind)
                .param("gone", gone)
                .param("after", after)
                .param("limit", limit)
                .query(TraceRows::at)
                .list();
    }

    private static Trace.At at(ResultSet row, int number) throws SQLException {
        OffsetDateTime first = row.getObject("happened_at", OffsetDateTime.class);
        return new Trace.At(
                row.getString("place"),
                row.getString("site_id"),
                row.getString("holding"),
                row.getString("id"),
                row.getString("material"),
                row.getString("lot"),
                row.getLong("quantity"),
                first == null ? null : first.toInstant(),
                row.getString("by_person"));
    }
}
