package org.bandtrail.supplystock.invoicematches;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds the order line that a line of an invoice bills, and the reels and batches that came of it. */
@Repository
class OrderLines {
    private static final int CHOICES = 500;
    private final JdbcClient jdbc;

    OrderLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A reel or batch of a delivery.
     *
     * @param reel false for a batch
     * @param quantity millimetres or pieces on arrival
     */
    record Holding(boolean reel, String id, long quantity) {}

    /** The lines of a supplier's orders that are not cancelled, newest order first. */
    List<OrderLineChoice> of(SupplierId supplier) {
        return jdbc.sql("""
                        SELECT l.purchase_id, l.line, l.material, l.kind, q.reference, l.ordered,
                               l.units * l.unit_price AS minor, p.currency,
                               coalesce((SELECT sum(h.quantity) FROM delivered_holding h WHERE h.state = 'accepted'
                                   AND h.purchase_id = l.purchase_id AND h.purchase_line = l.line), 0) AS received,
                               coalesce((SELECT sum(b.quantity) FROM billed_line b
                                   WHERE b.purchase_id = l.purchase_id AND b.line = l.line), 0) AS billed
                        FROM purchase p JOIN purchase_line l ON l.purchase_id = p.purchase_id
                        LEFT JOIN supplier_quote q ON q.supplier_id = p.supplier_id AND q.quote = l.quote
                        WHERE p.supplier_id = ? AND p.state <> 'cancelled'
                        ORDER BY p.ordered_at DESC, l.purchase_id DESC, l.line LIMIT ?""")
                .params(supplier.value(), CHOICES)
                .query((row, number) -> new OrderLineChoice(
                        row.getString("purchase_id"),
                        row.getInt("line"),
                        row.getString("material"),
                        row.getString("kind"),
                        row.getString("reference"),
                        row.getLong("ordered"),
                        row.getLong("received"),
                        row.getLong("billed"),
                        Money.of(row.getLong("minor"), row.getString("currency"))))
                .list();
    }

    /** The supplier whose name or identity the document gives, empty if none or several answer. */
    Optional<SupplierId> supplier(List<String> names) {
        List<String> found = jdbc.sql("""
                        SELECT supplier_id FROM supplier
                        WHERE lower(name) = ANY (?::varchar[]) OR lower(supplier_id) = ANY (?::varchar[])""")
                .params(lower(names), lower(names))
                .query(String.class)
                .list();
        return found.size() == 1 ? Optional.of(new SupplierId(found.getFirst())) : Optional.empty();
    }

    private static String[] lower(List<String> names) {
        return names.stream().map(name -> name.toLowerCase(Locale.ROOT)).toArray(String[]::new);
    }

    /** The accepted reels and batches of an order line, by identity. */
    List<Holding> holdings(String purchase, int line) {
        return jdbc.sql("""
                        SELECT holding, id, quantity FROM delivered_holding
                        WHERE purchase_id = ? AND purchase_line = ? AND state = 'accepted' ORDER BY holding, id""")
                .params(purchase, line)
                .query((row, number) -> new Holding(row.getString(1).equals("reel"), row.getString(2), row.getLong(3)))
                .list();
    }

    /**
     * The order line a line of an invoice most probably bills: the one it names; else, in the order it names or over
     * all, the only one with the supplier's number of the item; else the only one of the order.
     */
    static Optional<OrderLineChoice> probable(
            List<OrderLineChoice> choices, SupplierInvoice invoice, SupplierInvoice.Line line) {
        String order = spelt(line.order() == null ? invoice.order() : line.order());
        List<OrderLineChoice> named = order.isEmpty()
                ? choices
                : choices.stream()
                        .filter(each -> each.purchaseId().equals(order))
                        .toList();
        String number = spelt(line.orderLine());
        if (!order.isEmpty() && !number.isEmpty()) {
            return named.stream()
                    .filter(each -> number.equals(Integer.toString(each.line())))
                    .findFirst();
        }
        String item = spelt(line.sellersItem());
        List<OrderLineChoice> same = named.stream()
                .filter(each ->
                        !item.isEmpty() && (item.equals(spelt(each.reference())) || item.equals(each.materialCode())))
                .toList();
        if (same.size() == 1) {
            return Optional.of(same.getFirst());
        }
        return !order.isEmpty() && named.size() == 1 && invoice.lines().size() == 1
                ? Optional.of(named.getFirst())
                : Optional.empty();
    }

    private static String spelt(@Nullable String text) {
        return text == null ? "" : text.strip().toUpperCase(Locale.ROOT);
    }
}
