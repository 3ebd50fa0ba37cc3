package org.bandtrail.supplystock.landedcosts;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every landed cost with its shares. */
@Component
final class LandedCostProjection implements Projection {
    private final JdbcClient jdbc;

    LandedCostProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "landed-cost";
    }

    @Override
    public List<String> tables() {
        return List.of("landed_cost", "landed_share");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(LandedCostEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((LandedCostEvent) stored.payload()) {
                case LandedCostEvent.Spread spread -> insert(spread);
                case LandedCostEvent.TakenBack back ->
                    jdbc.sql("UPDATE landed_cost SET taken_back_because = ? WHERE landed_cost_id = ?")
                            .params(back.reason(), back.landedCostId().value())
                            .update();
            }
        }
    }

    private void insert(LandedCostEvent.Spread spread) {
        String deliveries =
                spread.shares().stream().map(LandedShare::deliveryId).distinct().collect(Collectors.joining(", "));
        jdbc.sql("""
                        INSERT INTO landed_cost (landed_cost_id, what, amount_minor, currency, basis, deliveries,
                            invoice_id, reference, by_person, spread_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(spread.landedCostId().value())
                .param(spread.what().name())
                .param(spread.amount().minor())
                .param(spread.amount().currency())
                .param(spread.basis().name())
                .param(deliveries)
                .param(spread.invoice() == null ? null : spread.invoice().value())
                .param(spread.reference())
                .param(spread.by().value())
                .param(spread.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
        jdbc.sql("""
                        INSERT INTO landed_share (landed_cost_id, holding, id, delivery_id, line, amount_minor)
                        SELECT ?, * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::integer[], ?::bigint[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        spread.landedCostId().value(),
                        spread.shares().stream()
                                .map(share -> share.reel() ? "reel" : "batch")
                                .toArray(String[]::new),
                        spread.shares().stream().map(LandedShare::id).toArray(String[]::new),
                        spread.shares().stream().map(LandedShare::deliveryId).toArray(String[]::new),
                        spread.shares().stream().map(LandedShare::line).toArray(Integer[]::new),
                        spread.shares().stream()
                                .map(share -> share.amount().minor())
                                .toArray(Long[]::new))
                .update();
    }
}
