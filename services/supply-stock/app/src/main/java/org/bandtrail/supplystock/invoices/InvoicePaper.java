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
            jdbc.sql("DELETE FROM %s WHERE invoice_id = ?".formatted(table))
                    .param(id)
                    .update();
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
                    .param(id)
                    .param(number)
                    .param(charge.reason())
                    .param(charge.amount().minor())
                    .update();
        }
    }

    private void head(InvoiceEvent.Registered registered) {
        InvoiceDocument paper = registered.document();
        jdbc.sql("""
                        INSERT INTO invoice (invoice_id, supplier_id, kind, number, issued_on, due_on, currency,
                            credits, order_text, tax_minor, payable_minor, source, by_person, registered_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .param(registered.invoiceId().value())
                .param(paper.supplier().value())
                .param(paper.kind().name())
                .param(paper.number())
                .param(paper.issuedOn())
                .param(paper.dueOn())
                .param(paper.currency())
                .param(paper.credits())
                .param(paper.order())
                .param(paper.tax().minor())
                .param(paper.payable().minor())
                .param(paper.source())
                .param(registered.by().value())
                .param(registered.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }

    private void line(String id, int position, InvoiceLine line) {
        LineLink link = line.link();
        jdbc.sql("""
                        INSERT INTO invoice_line (invoice_id, position, line, item, sellers_item, quantity, unit, price,
                            per_quantity, amount_minor, net_minor, line_use, purchase_id, purchase_line, link_quantity)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .param(id)
                .param(position)
                .param(line.line())
                .param(line.item())
                .param(line.sellersItem())
                .param(line.quantity())
                .param(line.unit())
                .param(line.price())
                .param(line.perQuantity())
                .param(line.amount().minor())
                .param(line.net().minor())
                .param(line.use().name())
                .param(link == null ? null : link.purchase().value())
                .param(link == null ? null : link.purchaseLine())
                .param(link == null ? null : link.quantity())
                .update();
    }
}
