package org.bandtrail.supplystock.deliveries;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The deliveries, their lines and the reels and batches of each line with their cost. */
@Repository
public class Deliveries {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final String HEADS = """
            SELECT d.*, coalesce(s.name, d.supplier_id) AS supplier_name, h.reels, h.batches, h.set_aside,
                   (SELECT count(*) FROM delivery_finding f WHERE f.delivery_id = d.delivery_id) AS findings
            FROM delivery d LEFT JOIN supplier s USING (supplier_id)
            CROSS JOIN LATERAL (SELECT count(*) FILTER (WHERE holding = 'reel') AS reels,
                    count(*) FILTER (WHERE holding = 'batch') AS batches,
                    count(*) FILTER (WHERE state = 'set aside') AS set_aside
                FROM delivered_holding WHERE delivery_id = d.delivery_id) h
            """;
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    Deliveries(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /**
     * One page of deliveries, the newest first.
     *
     * @param waiting only deliveries of which something is set aside
     * @param purchase only those of this order, or null
     * @param before delivery before which the page begins, null for the newest
     */
    public List<DeliveryRow> page(boolean waiting, @Nullable String purchase, @Nullable String before, int limit) {
        return jdbc.sql(HEADS + """
                        WHERE (NOT :waiting OR d.delivery_id IN (SELECT delivery_id FROM delivered_holding WHERE state = 'set aside'))
                          AND (:purchase::varchar IS NULL OR d.purchase_id = :purchase)
                          AND (:before::varchar IS NULL OR (d.delivered_at, d.delivery_id) <
                              (SELECT delivered_at, delivery_id FROM delivery WHERE delivery_id = :before))
                        ORDER BY d.delivered_at DESC, d.delivery_id DESC LIMIT :limit""")
                .param("waiting", waiting)
                .param("purchase", purchase)
                .param("before", before)
                .param("limit", limit)
                .query(Deliveries::head)
                .list();
    }

    /** One delivery with everything in it; waits for one recorded a moment ago. Empty if nobody recorded it. */
    public Optional<DeliveryRow.Whole> one(DeliveryId delivery) {
        Optional<DeliveryRow.Whole> known = find(delivery);
        return known.isEmpty() && projectors.getObject().caughtUp(PATIENCE) ? find(delivery) : known;
    }

    private Optional<DeliveryRow.Whole> find(DeliveryId delivery) {
        return jdbc.sql(HEADS + "WHERE d.delivery_id = ?")
                .param(delivery.value())
                .query(Deliveries::head)
                .optional()
                .map(head ->
                        new DeliveryRow.Whole(head, lines("l.delivery_id = ?", delivery.value()), findings(delivery)));
    }

    /** The lines delivered for an order, over all its deliveries, in their order. */
    public List<DeliveryRow.Line> linesOf(PurchaseId purchase) {
        return lines("l.delivery_id IN (SELECT delivery_id FROM delivery WHERE purchase_id = ?)", purchase.value());
    }

    /** One line of a delivery, empty if there is none. */
    public Optional<DeliveryRow.Line> line(DeliveryId delivery, int line) {
        return lines("l.delivery_id = ?", delivery.value()).stream()
                .filter(each -> each.line() == line)
                .findFirst();
    }

    private List<DeliveryRow.Line> lines(String where, String id) {
        Map<String, List<DeliveryRow.Piece>> pieces = new HashMap<>();
        jdbc.sql("SELECT l.*, l.delivery_id || ' ' || l.line AS of_line FROM delivered_holding l WHERE " + where
                        + " ORDER BY l.delivery_id, l.line, l.holding, l.id")
                .param(id)
                .query(row -> {
                    pieces.computeIfAbsent(row.getString("of_line"), unused -> new ArrayList<>())
                            .add(piece(row));
                });
        return jdbc.sql("SELECT l.* FROM delivery_line l WHERE " + where + " ORDER BY l.delivery_id, l.line")
                .param(id)
                .query((row, number) -> new DeliveryRow.Line(
                        row.getString("delivery_id"),
                        row.getInt("line"),
                        row.getObject("purchase_line", Integer.class),
                        row.getString("material"),
                        MaterialKind.valueOf(row.getString("kind")),
                        row.getLong("units"),
                        row.getLong("quantity"),
                        Money.of(row.getLong("cost_minor"), row.getString("currency")),
                        pieces.getOrDefault(row.getString("delivery_id") + " " + row.getInt("line"), List.of())))
                .list();
    }

    private List<Finding> findings(DeliveryId delivery) {
        return jdbc.sql("SELECT * FROM delivery_finding WHERE delivery_id = ? ORDER BY number")
                .param(delivery.value())
                .query((row, number) -> new Finding(
                        row.getInt("line"),
                        row.getString("id"),
                        Finding.What.valueOf(row.getString("what")),
                        row.getString("expected"),
                        row.getString("found")))
                .list();
    }

    private static DeliveryRow head(ResultSet row, int number) throws SQLException {
        return new DeliveryRow(
                row.getString("delivery_id"),
                row.getString("supplier_id"),
                row.getString("supplier_name"),
                row.getString("purchase_id"),
                row.getString("depot_id"),
                row.getString("delivery_note"),
                row.getObject("delivered_at", OffsetDateTime.class).toInstant(),
                row.getString("by_person"),
                row.getLong("reels"),
                row.getLong("batches"),
                row.getLong("set_aside"),
                row.getLong("findings"));
    }

    private static DeliveryRow.Piece piece(ResultSet row) throws SQLException {
        return new DeliveryRow.Piece(
                row.getString("holding"),
                row.getString("id"),
                row.getLong("quantity"),
                row.getObject("width_mm", Long.class),
                row.getString("lot"),
                row.getObject("expires_on", LocalDate.class),
                row.getString("condition"),
                row.getString("state"),
                Money.of(row.getLong("cost_minor"), row.getString("currency")));
    }
}
