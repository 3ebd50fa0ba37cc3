package org.bandtrail.supplystock.invoices;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every invoice with its lines, where each stands, and its history. */
@Component
final class InvoiceProjection implements Projection {
    private final JdbcClient jdbc;
    private final InvoicePaper paper;

    InvoiceProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.paper = new InvoicePaper(jdbc);
    }

    @Override
    public String name() {
        return "invoice";
    }

    @Override
    public List<String> tables() {
        return List.of("invoice", "invoice_line", "invoice_charge", "invoice_history");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(InvoiceEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            InvoiceEvent event = (InvoiceEvent) stored.payload();
            // An event whose line is in the history was counted before.
            if (told(stored.position(), event) == 1) {
                String id = event.invoiceId().value();
                write(id, event);
                firstPerson(id, event);
                state(id);
            }
        }
    }

    private void write(String id, InvoiceEvent event) {
        switch (event) {
            case InvoiceEvent.Registered registered -> paper.keep(registered);
            case InvoiceEvent.LineLinked linked -> link(id, linked.line(), LineUse.GOODS, linked.link());
            case InvoiceEvent.LineSorted sorted -> link(id, sorted.line(), sorted.use(), null);
            case InvoiceEvent.Held held -> hold(id, held);
            case InvoiceEvent.Settled settled -> settle(id, settled);
            case InvoiceEvent.Approved approved -> approve(id, approved);
            case InvoiceEvent.ChargeSpread spread ->
                jdbc.sql("UPDATE invoice SET spread_minor = spread_minor + ? WHERE invoice_id = ?")
                        .param(spread.amount().minor())
                        .param(id)
                        .update();
            case InvoiceEvent.Withdrawn withdrawn ->
                jdbc.sql("UPDATE invoice SET withdrawn = ? WHERE invoice_id = ?")
                        .param(withdrawn.reason())
                        .param(id)
                        .update();
            case InvoiceEvent.ApprovedOnce unused -> {
                // Who approved is written with every event, see firstPerson.
            }
        }
    }

    private void link(String id, String line, LineUse use, @Nullable LineLink link) {
        jdbc.sql("""
                        UPDATE invoice_line SET line_use = ?, purchase_id = ?, purchase_line = ?, link_quantity = ?,
                            standing = CASE standing WHEN 'HELD' THEN 'HELD' ELSE 'OPEN' END,
                            reason = CASE standing WHEN 'HELD' THEN reason END,
                            pay_quantity = NULL, pay_net_minor = NULL
                        WHERE invoice_id = ? AND line = ?""")
                .param(use.name())
                .param(link == null ? null : link.purchase().value())
                .param(link == null ? null : link.purchaseLine())
                .param(link == null ? null : link.quantity())
                .param(id)
                .param(line)
                .update();
    }

    private void hold(String id, InvoiceEvent.Held held) {
        if (held.line() == null) {
            jdbc.sql("UPDATE invoice SET held_because = ? WHERE invoice_id = ?")
                    .param(held.reason())
                    .param(id)
                    .update();
        } else {
            standing(id, held.line(), "HELD", held.reason(), null, null);
        }
    }

    private void settle(String id, InvoiceEvent.Settled settled) {
        if (settled.line() == null) {
            jdbc.sql("UPDATE invoice SET held_because = NULL WHERE invoice_id = ?")
                    .param(id)
                    .update();
            return;
        }
        boolean part = settled.how() == Settlement.PAY_RECEIVED;
        standing(
                id,
                settled.line(),
                settled.how() == Settlement.NOT_PAID ? "NOT_PAID" : "SETTLED",
                settled.reason(),
                part ? settled.payQuantity() : null,
                part && settled.payNet() != null ? settled.payNet().minor() : null);
    }

    private void standing(
            String id, String line, String standing, String reason, @Nullable Long quantity, @Nullable Long net) {
        jdbc.sql("""
                        UPDATE invoice_line SET standing = ?, reason = ?, pay_quantity = ?, pay_net_minor = ?
                        WHERE invoice_id = ? AND line = ?""")
                .param(standing)
                .param(reason)
                .param(quantity)
                .param(net)
                .param(id)
                .param(line)
                .update();
    }

    private void approve(String id, InvoiceEvent.Approved approved) {
        jdbc.sql("UPDATE invoice_line SET standing = 'APPROVED' WHERE invoice_id = ? AND line = ANY (?::varchar[])")
                .param(id)
                .param(approved.lines().stream()
                        .map(InvoiceEvent.ApprovedLine::line)
                        .toArray(String[]::new))
                .update();
        jdbc.sql("UPDATE invoice SET approved_minor = approved_minor + ? WHERE invoice_id = ?")
                .param(approved.toPay().minor())
                .param(id)
                .update();
    }

    /** A first approval is of the figures of that moment; any change but the spreading of a charge takes it away. */
    private void firstPerson(String id, InvoiceEvent event) {
        if (!(event instanceof InvoiceEvent.ChargeSpread)) {
            jdbc.sql("UPDATE invoice SET first_by = ? WHERE invoice_id = ?")
                    .param(
                            event instanceof InvoiceEvent.ApprovedOnce once
                                    ? once.by().value()
                                    : null)
                    .param(id)
                    .update();
        }
    }

    private void state(String id) {
        jdbc.sql("""
                        UPDATE invoice i SET state = CASE
                            WHEN withdrawn IS NOT NULL THEN 'withdrawn'
                            WHEN held_because IS NOT NULL THEN 'held'
                            WHEN l.waiting = 0 AND l.held = 0 THEN 'approved'
                            WHEN first_by IS NOT NULL THEN 'approved once'
                            WHEN l.approved > 0 THEN 'part approved'
                            WHEN l.held > 0 THEN 'held'
                            ELSE 'waiting' END
                        FROM (SELECT count(*) FILTER (WHERE standing IN ('OPEN', 'SETTLED')) AS waiting,
                                     count(*) FILTER (WHERE standing = 'HELD') AS held,
                                     count(*) FILTER (WHERE standing = 'APPROVED') AS approved
                              FROM invoice_line WHERE invoice_id = :id) l
                        WHERE i.invoice_id = :id""").param("id", id).update();
    }

    private int told(long position, InvoiceEvent event) {
        InvoiceWords words = InvoiceWords.of(event);
        return jdbc.sql("""
                        INSERT INTO invoice_history (position, invoice_id, what, note, by_person, at)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(position)
                .param(event.invoiceId().value())
                .param(words.what())
                .param(words.note())
                .param(event.by().value())
                .param(event.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}
