package org.bandtrail.supplystock.suppliers;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of suppliers and their quotes. Both are few, so each event is one or two statements. */
@Component
final class SupplierProjection implements Projection {
    private final JdbcClient jdbc;

    SupplierProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "supplier";
    }

    @Override
    public List<String> tables() {
        return List.of("supplier", "supplier_quote", "supplier_price_break");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(SupplierEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((SupplierEvent) stored.payload()) {
                case SupplierEvent.Registered registered ->
                    jdbc.sql("INSERT INTO supplier (supplier_id, name) VALUES (?, ?) ON CONFLICT DO NOTHING")
                            .params(registered.supplierId().value(), registered.name())
                            .update();
                case SupplierEvent.Quoted quoted -> insert(quoted);
                case SupplierEvent.QuoteWithdrawn gone ->
                    jdbc.sql("UPDATE supplier_quote SET withdrawn = true WHERE supplier_id = ? AND quote = ?")
                            .params(gone.supplierId().value(), gone.number())
                            .update();
            }
        }
    }

    private void insert(SupplierEvent.Quoted quoted) {
        Quote quote = quoted.quote();
        jdbc.sql("""
                        INSERT INTO supplier_quote (supplier_id, quote, material, kind, unit, content, pack_units,
                            minimum_units, lead_time_days, valid_from, valid_until, currency, reference)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(quoted.supplierId().value())
                .param(quoted.number())
                .param(quote.material().value())
                .param(quote.kind().name())
                .param(quote.packing().unit().name())
                .param(quote.packing().content())
                .param(quote.packUnits())
                .param(quote.minimumUnits())
                .param(quote.leadTimeDays())
                .param(quote.validFrom())
                .param(quote.validUntil())
                .param(quote.currency())
                .param(quote.reference())
                .update();
        jdbc.sql("""
                        INSERT INTO supplier_price_break (supplier_id, quote, from_units, unit_price)
                        SELECT ?, ?, * FROM unnest(?::bigint[], ?::bigint[]) ON CONFLICT DO NOTHING""")
                .params(
                        quoted.supplierId().value(),
                        quoted.number(),
                        quote.breaks().stream().map(PriceBreak::fromUnits).toArray(Long[]::new),
                        quote.breaks().stream().map(PriceBreak::unitPrice).toArray(Long[]::new))
                .update();
    }
}
