package org.bandtrail.supplystock.billings;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was ordered, received and billed, line by line of the purchases. */
@Repository
public class BilledLines {
    private static final long MICROMETRES_PER_MM = 1_000;
    private final JdbcClient jdbc;

    BilledLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What was billed against a line of a purchase up to now. */
    public BilledSoFar before(PurchaseId purchase, int line) {
        return jdbc.sql("""
                        SELECT coalesce(sum(quantity), 0), coalesce(sum(net_minor), 0),
                               coalesce(sum(at_receipt_minor), 0)
                        FROM billed_line WHERE purchase_id = ? AND line = ?""")
                .params(purchase.value(), line)
                .query((row, number) -> new BilledSoFar(row.getLong(1), row.getLong(2), row.getLong(3)))
                .single();
    }

    /**
     * What became of a billed line.
     *
     * @param atReceipt what the goods cost when received
     * @param difference what was carried to the goods, negative if it took cost off
     */
    public record Billed(String verdict, Money net, Money atReceipt, Money difference) {}

    /** The billed lines of an invoice, by line of the invoice. */
    public Map<String, Billed> ofInvoice(String invoice) {
        Map<String, Billed> lines = new HashMap<>();
        jdbc.sql("SELECT * FROM billed_line WHERE invoice_id = ?")
                .param(invoice)
                .query(row -> {
                    String currency = row.getString("currency");
                    Money net = Money.of(row.getLong("net_minor"), currency);
                    Money atReceipt = Money.of(row.getLong("at_receipt_minor"), currency);
                    lines.put(
                            row.getString("invoice_line"),
                            new Billed(row.getString("verdict"), net, atReceipt, net.minus(atReceipt)));
                });
        return lines;
    }

    /** The figures of a line of a purchase, empty if nobody ordered it. */
    public Optional<OrderLineFigures> order(PurchaseId purchase, int line) {
        return jdbc.sql("""
                        SELECT l.material, l.kind, l.unit, l.content, l.ordered, l.units * l.unit_price AS minor,
                               p.currency, p.supplier_id,
                               coalesce(sum(h.quantity) FILTER (WHERE h.state = 'accepted'), 0) AS received,
                               coalesce(sum(h.cost_minor) FILTER (WHERE h.state = 'accepted'), 0) AS received_minor,
                               coalesce(sum(h.quantity) FILTER (WHERE h.state = 'set aside'), 0) AS waiting
                        FROM purchase p JOIN purchase_line l ON l.purchase_id = p.purchase_id
                        LEFT JOIN delivered_holding h ON h.purchase_id = l.purchase_id AND h.purchase_line = l.line
                        WHERE l.purchase_id = ? AND l.line = ?
                        GROUP BY l.purchase_id, l.line, p.currency, p.supplier_id""")
                .params(purchase.value(), line)
                .query((row, number) -> {
                    Measure measure = row.getString("kind").equals("FASTENER") ? Measure.PIECES : Measure.MILLIMETRES;
                    return new OrderLineFigures(
                            new SupplierId(row.getString("supplier_id")),
                            purchase,
                            line,
                            row.getString("material"),
                            measure,
                            content(measure, row.getString("unit"), row.getLong("content")),
                            row.getString("currency"),
                            row.getLong("ordered"),
                            row.getLong("minor"),
                            row.getLong("received"),
                            row.getLong("received_minor"),
                            row.getLong("waiting"));
                })
                .optional();
    }

    /** What one package holds; an order in metres or pieces says nothing about packages. */
    private static @Nullable Long content(Measure measure, String unit, long content) {
        boolean packed = unit.equals("REEL") || unit.equals("PACK") || unit.equals("BOX");
        if (!packed) {
            return null;
        }
        return measure == Measure.PIECES ? content : content / MICROMETRES_PER_MM;
    }
}
