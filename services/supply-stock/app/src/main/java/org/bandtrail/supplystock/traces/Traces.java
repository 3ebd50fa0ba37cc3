package org.bandtrail.supplystock.traces;

import java.sql.Array;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
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

    /** Everything that bears this identity, in the order of {@link TraceOf}; a lot once for each supplier of it. */
    public List<Trace.Found> find(String text) {
        List<Trace.Found> found = new ArrayList<>();
        suppliersOf(text)
                .forEach(supplier -> found.add(new Trace.Found(
                        TraceOf.LOT.word(), TraceSubject.lot(text, supplier).id(), supplier)));
        Arrays.stream(TraceOf.values())
                .filter(what -> what != TraceOf.LOT)
                .map(what -> TraceSubject.of(what, text))
                .filter(this::exists)
                .forEach(each -> found.add(new Trace.Found(each.what().word(), each.id(), null)));
        return found;
    }

    /** The suppliers that delivered something under this lot, by identity. */
    public List<String> suppliersOf(String lot) {
        return jdbc.sql("SELECT DISTINCT supplier_id FROM delivered_holding WHERE lot = ? ORDER BY supplier_id")
                .param(Lots.spelt(lot))
                .query(String.class)
                .list();
    }

    private boolean exists(TraceSubject subject) {
        return jdbc.sql("SELECT EXISTS (SELECT 1 FROM (" + subject.holdings() + ") AS any_of_it)")
                .param("asked", subject.id())
                .query(Boolean.class)
                .single();
    }

    /** The trace in short; empty if nothing bears this identity. */
    public Optional<Trace> trace(TraceSubject subject) {
        TraceOf what = subject.what();
        long holdings = jdbc.sql(TraceSql.family(subject) + " SELECT count(*) FROM family")
                .param("asked", subject.id())
                .param("from", subject.supplier())
                .query(Long.class)
                .single();
        return holdings == 0
                ? Optional.empty()
                : Optional.of(new Trace(
                        what.word(),
                        subject.id(),
                        subject.supplier(),
                        what == TraceOf.LOT ? suppliersOf(subject.id()) : List.of(),
                        holdings,
                        origins(subject),
                        what.goesOn() ? stations(subject) : List.of()));
    }

    private List<Trace.Origin> origins(TraceSubject subject) {
        return jdbc.sql(TraceSql.family(subject) + TraceSql.ORIGINS + """
                        SELECT lot, material, kind, supplier_id, purchase_id, delivery_id, delivered_on, min(expires_on),
                               count(DISTINCT of_id),
                               (SELECT array_agg(DISTINCT b.invoice_id) FROM billed_line b
                                 WHERE b.purchase_id = o.purchase_id AND b.line = o.purchase_line)
                        FROM origin o
                        GROUP BY lot, material, kind, supplier_id, purchase_id, purchase_line, delivery_id, delivered_on
                        ORDER BY delivered_on, delivery_id, material, lot LIMIT 200""")
                .param("asked", subject.id())
                .param("from", subject.supplier())
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

    private List<Trace.Station> stations(TraceSubject subject) {
        return jdbc.sql(TraceSql.family(subject) + TraceSql.SPOTS + """
                        SELECT place_kind, count(DISTINCT place_id) FILTER (WHERE quantity <> 0), count(DISTINCT place_id),
                               coalesce(sum(quantity) FILTER (WHERE holding = 'reel'), 0),
                               coalesce(sum(quantity) FILTER (WHERE holding = 'batch'), 0)
                        FROM spot GROUP BY place_kind ORDER BY position(place_kind IN :order)""")
                .param("asked", subject.id())
                .param("from", subject.supplier())
                .param("order", ORDER)
                .query((row, number) -> new Trace.Station(
                        row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4), row.getLong(5)))
                .list();
    }

    /**
     * Every reel and batch of a lot, strips included, that a depot has in use now; what is set aside is not.
     *
     * @param supplier whose lot, null for whoever's
     */
    public List<InDepot> inDepots(String lot, @Nullable String supplier) {
        TraceSubject subject = TraceSubject.lot(lot, supplier);
        return jdbc.sql(TraceSql.family(subject) + TraceSql.SPOTS + """
                        SELECT DISTINCT holding, id, split_part(place_id, '/', 1) FROM spot
                        WHERE place_kind = 'depot' AND quantity > 0 ORDER BY 1, 2, 3""")
                .param("asked", subject.id())
                .param("from", subject.supplier())
                .query((row, number) -> new InDepot(row.getString(1), row.getString(2), new DepotId(row.getString(3))))
                .list();
    }

    /** @param holding {@code reel} or {@code batch} */
    public record InDepot(String holding, String id, DepotId depot) {}

    /** A lot and whose it is. */
    public record SuppliersLot(String lot, String supplierId) {}

    /** The lots a reel or batch comes from: one, unless deliveries were told twice; empty if none is known. */
    public List<SuppliersLot> lotsOf(String holding, String id) {
        TraceSubject subject = TraceSubject.of(holding.equals("reel") ? TraceOf.REEL : TraceOf.BATCH, id);
        return jdbc.sql(TraceSql.family(subject) + TraceSql.ORIGINS + """
                        SELECT DISTINCT lot, supplier_id FROM origin WHERE of_id = :asked AND lot IS NOT NULL
                        ORDER BY lot, supplier_id""")
                .param("asked", subject.id())
                .query((row, number) -> new SuppliersLot(row.getString(1), row.getString(2)))
                .list();
    }

    private static List<String> texts(@Nullable Array array) throws SQLException {
        return array == null ? List.of() : List.of((String[]) array.getArray());
    }
}
