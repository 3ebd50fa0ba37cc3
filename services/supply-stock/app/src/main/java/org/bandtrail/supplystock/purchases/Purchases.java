package org.bandtrail.supplystock.purchases;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The orders and their lines. */
@Repository
public class Purchases {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final String HEADS = """
            SELECT p.*, coalesce(s.name, p.supplier_id) AS supplier_name, l.total, l.committed
            FROM purchase p LEFT JOIN supplier s USING (supplier_id)
            CROSS JOIN LATERAL (SELECT sum(units * unit_price)::bigint AS total, sum(committed)::bigint AS committed
                FROM purchase_line WHERE purchase_id = p.purchase_id) l
            """;
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    Purchases(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /**
     * One page of orders, the newest first.
     *
     * @param onlyOpen only orders of which something is still to come
     * @param supplier only of this supplier, or null
     * @param before order before which the page begins, null for the newest
     */
    public List<PurchaseRow> page(boolean onlyOpen, @Nullable String supplier, @Nullable String before, int limit) {
        return jdbc.sql(HEADS + """
                        WHERE (NOT :onlyOpen OR p.state IN ('ordered', 'partly received'))
                          AND (:supplier::varchar IS NULL OR p.supplier_id = :supplier)
                          AND (:before::varchar IS NULL OR (p.ordered_at, p.purchase_id) <
                              (SELECT ordered_at, purchase_id FROM purchase WHERE purchase_id = :before))
                        ORDER BY p.ordered_at DESC, p.purchase_id DESC LIMIT :limit""")
                .param("onlyOpen", onlyOpen)
                .param("supplier", supplier)
                .param("before", before)
                .param("limit", limit)
                .query(Purchases::head)
                .list();
    }

    /** One order with its lines; waits for one placed a moment ago. Empty if nobody placed it. */
    public Optional<PurchaseRow.Whole> one(PurchaseId purchase) {
        Optional<PurchaseRow.Whole> known = find(purchase);
        return known.isEmpty() && projectors.getObject().caughtUp(PATIENCE) ? find(purchase) : known;
    }

    private Optional<PurchaseRow.Whole> find(PurchaseId purchase) {
        return jdbc.sql(HEADS + "WHERE p.purchase_id = ?")
                .param(purchase.value())
                .query(Purchases::head)
                .optional()
                .map(head -> new PurchaseRow.Whole(head, lines(purchase)));
    }

    /** The lines of an order, in their order. */
    public List<PurchaseRow.Line> lines(PurchaseId purchase) {
        return jdbc.sql("""
                        SELECT l.*, p.currency FROM purchase_line l JOIN purchase p USING (purchase_id)
                        WHERE purchase_id = ? ORDER BY line""").param(purchase.value()).query(Purchases::line).list();
    }

    private static PurchaseRow head(ResultSet row, int number) throws SQLException {
        String currency = row.getString("currency");
        return new PurchaseRow(
                row.getString("purchase_id"),
                row.getString("supplier_id"),
                row.getString("supplier_name"),
                row.getString("depot_id"),
                row.getString("state"),
                row.getObject("expected_on", LocalDate.class),
                row.getObject("ordered_at", OffsetDateTime.class).toInstant(),
                row.getString("by_person"),
                row.getString("reason"),
                Money.of(row.getLong("total"), currency),
                Money.of(row.getLong("committed"), currency));
    }

    private static PurchaseRow.Line line(ResultSet row, int number) throws SQLException {
        OrderUnit unit = OrderUnit.valueOf(row.getString("unit"));
        String currency = row.getString("currency");
        return new PurchaseRow.Line(
                row.getString("purchase_id"),
                row.getInt("line"),
                row.getString("material"),
                MaterialKind.valueOf(row.getString("kind")),
                unit.word(),
                unit.rec20(),
                unit.rec21(),
                row.getLong("content"),
                row.getLong("units"),
                row.getLong("ordered"),
                Money.of(row.getLong("unit_price"), currency),
                Money.of(Math.multiplyExact(row.getLong("units"), row.getLong("unit_price")), currency),
                row.getObject("quote", Integer.class),
                row.getString("site_id"),
                row.getString("grant_ref"),
                unit.counted(),
                row.getLong("received_units"),
                row.getLong("received"),
                row.getLong("remaining"),
                Money.of(row.getLong("committed"), currency));
    }
}
