package org.bandtrail.supplystock.traces;

import java.sql.Array;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.supplystock.deliveries.Lots;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads traces in short; see the package for what they mean, and {@link TraceRows} for their rows. */
@Repository
public class Traces {
    private static final String ORDER = "set-aside depot in-transit vehicle crew tree bag disposed written-off missing";
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
                .param("order", ORDER)
                .query((row, number) -> new Trace.Station(
                        row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4), row.getLong(5)))
                .list();
    }

    /** Every reel and batch of a lot, strips included, that a depot has in use now; what is set aside is not. */
    public List<InDepot> inDepots(String lot) {
        return jdbc.sql(TraceSql.family(TraceOf.LOT) + TraceSql.SPOTS + """
                        SELECT DISTINCT holding, id, split_part(place_id, '/', 1) FROM spot
                        WHERE place_kind = 'depot' AND quantity > 0 ORDER BY 1, 2, 3""")
                .param("asked", Lots.spelt(lot))
                .query((row, number) -> new InDepot(row.getString(1), row.getString(2), new DepotId(row.getString(3))))
                .list();
    }

    /** @param holding {@code reel} or {@code batch} */
    public record InDepot(String holding, String id, DepotId depot) {}

    /** The lots a reel or batch comes from: one, unless deliveries were told twice; empty if none is known. */
    public List<String> lotsOf(String holding, String id) {
        TraceOf what = holding.equals("reel") ? TraceOf.REEL : TraceOf.BATCH;
        return jdbc.sql(TraceSql.family(what) + TraceSql.ORIGINS + """
                        SELECT DISTINCT lot FROM origin WHERE of_id = :asked AND lot IS NOT NULL ORDER BY lot""")
                .param("asked", id)
                .query(String.class)
                .list();
    }

    /** An identity as it is kept. */
    static String spelt(TraceOf what, String text) {
        return what == TraceOf.LOT ? Lots.spelt(text) : text.strip().toUpperCase(java.util.Locale.ROOT);
    }

    private static List<String> texts(@Nullable Array array) throws SQLException {
        return array == null ? List.of() : List.of((String[]) array.getArray());
    }
}
