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
                .params(
                        position,
                        billed.invoice(),
                        line.invoiceLine(),
                        billed.purchase().value(),
                        line.purchaseLine(),
                        line.quantity(),
                        line.net().minor(),
                        line.atReceipt().minor(),
                        line.net().currency(),
                        line.verdict().words(),
                        line.acceptedBecause(),
                        billed.by().value(),
                        billed.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}
