package org.bandtrail.supplystock.invoices;

import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes what came in; a paper that was withdrawn and comes again replaces its rows. */
final class InvoicePaper {
    private final JdbcClient jdbc;

    InvoicePaper(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void keep(InvoiceEvent.Registered registered) {
        String id = registered.invoiceId().value();
        for (String table : List.of("invoice", "invoice_line", "invoice_charge")) {
            jdbc.sql("DELETE FROM %s WHERE invoice_id = ?".formatted(table)).param(id).update();
        }
        head(registered);
        int position = 0;
        for (InvoiceLine line : registered.document().lines()) {
            position++;
            line(id, position, line);
        }
        int number = 0;
        for (InvoiceDocument.Charge charge : registered.document().charges()) {
            number++;
            jdbc.sql("INSERT INTO invoice_charge (invoice_id, number, reason, amount_minor) VALUES (?, ?, ?, ?)")
                    .params(id, number, charge.reason(), charge.amount().minor())
                    .update();
        }
    }

    private void head(InvoiceEvent.Registered registered) {
        InvoiceDocument paper = registered.document();
        jdbc.sql("""
                        INSERT INTO invoice (invoice_id, supplier_id, kind, number, issued_on, due_on, currency, credits,
                            order_text, tax_minor, payable_minor, source, by_person, registered_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        registered.invoiceId().value(),
                        paper.supplier().value(),
                        paper.kind().name(),
                        paper.number(),
                        paper.issuedOn(),
                        paper.dueOn(),
                        paper.currency(),
                        paper.credits(),
                        paper.order(),
                        paper.tax().minor(),
                        paper.payable().minor(),
                        paper.source(),
                        registered.by().value(),
                        registered.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }

    private void line(String id, int position, InvoiceLine line) {
        LineLink link = line.link();
        jdbc.sql("""
                        INSERT INTO invoice_line (invoice_id, position, line, item, sellers_item, quantity, unit, price,
                            per_quantity, amount_minor, net_minor, line_use, purchase_id, purchase_line, link_quantity)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        id,
                        position,
                        line.line(),
                        line.item(),
                        line.sellersItem(),
                        line.quantity(),
                        line.unit(),
                        line.price(),
                        line.perQuantity(),
                        line.amount().minor(),
                        line.net().minor(),
                        line.use().name(),
                        link == null ? null : link.purchase().value(),
                        link == null ? null : link.purchaseLine(),
                        link == null ? null : link.quantity())
                .update();
    }
}
