package org.bandtrail.supplystock.billings;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every billed line. */
@Component
final class BillingProjection implements Projection {
    private final JdbcClient jdbc;

    BillingProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "billing";
    }

    @Override
    public List<String> tables() {
        return List.of("billed_line");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BillingEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((BillingEvent) stored.payload()) {
                case BillingEvent.Billed billed ->
                    billed.lines().forEach(line -> insert(stored.position(), billed, line));
            }
        }
    }

    private void insert(long position, BillingEvent.Billed billed, BilledLine line) {
        jdbc.sql("""
                        INSERT INTO billed_line (position, invoice_id, invoice_line, purchase_id, line, quantity,
                            net_minor, at_receipt_minor, currency, verdict, accepted_because, by_person, billed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(position)
                .param(billed.invoice())
                .param(line.invoiceLine())
                .param(billed.purchase().value())
                .param(line.purchaseLine())
                .param(line.quantity())
                .param(line.net().minor())
                .param(line.atReceipt().minor())
                .param(line.net().currency())
                .param(line.verdict().words())
                .param(line.acceptedBecause())
                .param(billed.by().value())
                .param(billed.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}
