package org.bandtrail.supplystock.traces;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.supplystock.deliveries.Lots;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads traces; see the package for what they mean. */
@Repository
public class Traces {
    private static final String UNSORTED = "supplier set-aside depot in-transit vehicle crew tree bag disposed missing";
    private final JdbcClient jdbc;

    Traces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Everything that bears this identity, in the order of {@link TraceOf}. */
    public List<Trace.Found> find(String text) {
        return java.util.Arrays.stream(TraceOf.values())
                .map(what -> new Trace.Found(what.word(), spelt(what, text)))
                .filter(found -> exists(TraceOf.of(found.what()), found.id()))
                .toList();
    }

    private boolean exists(TraceOf what, String id) {
        return jdbc.sql("SELECT EXISTS (SELECT 1 FROM (" + what.holdings() + ") AS any_of_it)")
                .param("asked", id)
                .query(Boolean.class)
                .single();
    }

    /** The trace in short; empty if nothing bears this identity. */
    public Optional<Trace> trace(TraceOf what, String asked) {
        String id = spelt(what, asked);
        long holdings = jdbc.sql(TraceSql.family(what) + " SELECT count(*) FROM family")
                .param("asked", id)
                .query(Long.class)
                .single();
        return holdings == 0
                ? Optional.empty()
                : Optional.of(new Trace(
                        what.word(), id, holdings, origins(what, id), what.goesOn() ? stations(what, id) : List.of()));
    }

    private List<Trace.Origin> origins(TraceOf what, String id) {
        return jdbc.sql(TraceSql.family(what) + TraceSql.ORIGINS + """
                        SELECT lot, material, kind, supplier_id, purchase_id, delivery_id, delivered_on, min(expires_on),
                               count(DISTINCT of_id),
                               (SELECT array_agg(DISTINCT b.invoice_id) FROM billed_line b
                                 WHERE b.purchase_id = o.purchase_id AND b.line = o.purchase_line)
                        FROM origin o
                        GROUP BY lot, material, kind, supplier_id, purchase_id, purchase_line, delivery_id, delivered_on
                        ORDER BY delivered_on, delivery_id, material, lot LIMIT 200""")
                .param("asked", id)
                .query((row, number) -> new Trace.Origin(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6),
                        row.getObject(7, LocalDate.class),
                        row.getObject(8, LocalDate.class),
                        row.getLong(9),
                        texts(row.getArray(10))))
                .list();
    }

    private List<Trace.Station> stations(TraceOf what, String id) {
        return jdbc.sql(TraceSql.family(what) + TraceSql.SPOTS + """
                        SELECT place_kind, count(DISTINCT place_id) FILTER (WHERE quantity <> 0), count(DISTINCT place_id),
                               coalesce(sum(quantity) FILTER (WHERE holding = 'reel'), 0),
                               coalesce(sum(quantity) FILTER (WHERE holding = 'batch'), 0)
                        FROM spot GROUP BY place_kind ORDER BY position(place_kind IN :order)""")
                .param("asked", id)
                .param("order", UNSORTED)
                .query((row, number) -> new Trace.Station(
                        row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4), row.getLong(5)))
                .list();
    }

    /**
     * One page of the reels and batches, batches first, by identity.
     *
     * @param after {@code holding|id} of the last row before, empty for the first page
     */
    public List<Trace.Part> parts(TraceOf what, String asked, String after, int limit) {
        return jdbc.sql(TraceSql.family(what) + TraceSql.ORIGINS + """
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
                .param("asked", spelt(what, asked))
                .param("after", after)
                .param("limit", limit)
                .query(Traces::part)
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
     * @param kind only places of this kind, or null
     * @param gone whether places that hold nothing of it any more are shown too
     * @param after cursor of the last row before, empty for the first page
     */
    public List<Trace.At> places(
            TraceOf what, String asked, @Nullable String kind, boolean gone, String after, int limit) {
        return jdbc.sql(TraceSql.family(what) + TraceSql.ORIGINS + TraceSql.SPOTS + """
                        , page AS (
                            SELECT place_kind || ':' || place_id AS place, * FROM spot
                            WHERE (:kind::varchar IS NULL OR place_kind = :kind) AND (:gone OR quantity <> 0)
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
                .param("asked", spelt(what, asked))
                .param("kind", kind)
                .param("gone", gone)
                .param("after", after)
                .param("limit", limit)
                .query(Traces::at)
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

    /** All reels and batches of a lot, strips included. */
    public List<Trace.Found> ofLot(String lot) {
        return jdbc.sql(TraceSql.family(TraceOf.LOT) + " SELECT holding, id FROM family ORDER BY 1, 2")
                .param("asked", Lots.spelt(lot))
                .query((row, number) -> new Trace.Found(row.getString(1), row.getString(2)))
                .list();
    }

    /** The lots a reel or batch comes from: one, unless deliveries were told twice; empty if none is known. */
    public List<String> lotsOf(String holding, String id) {
        TraceOf what = holding.equals("reel") ? TraceOf.REEL : TraceOf.BATCH;
        return jdbc.sql(TraceSql.family(what) + TraceSql.ORIGINS + """
                        SELECT DISTINCT lot FROM origin WHERE of_id = :asked AND lot IS NOT NULL ORDER BY lot""")
                .param("asked", id)
                .query(String.class)
                .list();
    }

    private static String spelt(TraceOf what, String text) {
        return what == TraceOf.LOT ? Lots.spelt(text) : text.strip().toUpperCase(java.util.Locale.ROOT);
    }

    private static List<String> texts(@Nullable Array array) throws SQLException {
        return array == null ? List.of() : List.of((String[]) array.getArray());
    }
}
