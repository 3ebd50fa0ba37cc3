package org.bandtrail.supplystock.landedcosts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.Money;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The lines of deliveries with their reels and batches; what went back to the supplier is left out. */
@Repository
class DeliveredLines {
    private static final int CHOICES = 100;
    private final JdbcClient jdbc;

    DeliveredLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A delivery that can bear freight or duty.
     *
     * @param cost of its goods when they were received
     */
    record Choice(String deliveryId, String supplierId, LocalDate deliveredOn, long reelsAndBatches, Money cost) {}

    /** The newest deliveries with goods still in the books. */
    List<Choice> newest() {
        return jdbc.sql("""
                        SELECT delivery_id, supplier_id, delivered_on, count(*) AS holdings, sum(cost_minor) AS minor,
                               min(currency) AS currency
                        FROM delivered_holding WHERE state <> 'sent back'
                        GROUP BY delivery_id, supplier_id, delivered_on
                        ORDER BY delivered_on DESC, delivery_id DESC LIMIT ?""")
                .param(CHOICES)
                .query((row, number) -> new Choice(
                        row.getString("delivery_id"),
                        row.getString("supplier_id"),
                        row.getObject("delivered_on", LocalDate.class),
                        row.getLong("holdings"),
                        Money.of(row.getLong("minor"), row.getString("currency"))))
                .list();
    }

    /** The lines of these deliveries, in order. */
    List<DeliveredLine> of(List<String> deliveries) {
        Map<String, DeliveredLine> lines = new LinkedHashMap<>();
        jdbc.sql("""
                        SELECT delivery_id, line, material, kind, holding, id, quantity, cost_minor, currency
                        FROM delivered_holding WHERE delivery_id = ANY (?::varchar[]) AND state <> 'sent back'
                        ORDER BY delivery_id, line,
                            holding, id""").param(deliveries.toArray(String[]::new)).query(row -> {
            Money cost = Money.of(row.getLong("cost_minor"), row.getString("currency"));
            DeliveredLine one = new DeliveredLine(
                    row.getString("delivery_id"),
                    row.getInt("line"),
                    row.getString("material"),
                    !row.getString("kind").equals("FASTENER"),
                    cost,
                    List.of(new DeliveredLine.Holding(
                            row.getString("holding").equals("reel"), row.getString("id"), row.getLong("quantity"))));
            lines.merge(one.deliveryId() + "/" + one.line(), one, DeliveredLines::together);
        });
        return List.copyOf(lines.values());
    }

    private static DeliveredLine together(DeliveredLine one, DeliveredLine more) {
        List<DeliveredLine.Holding> holdings = new ArrayList<>(one.holdings());
        holdings.addAll(more.holdings());
        return new DeliveredLine(
                one.deliveryId(),
                one.line(),
                one.materialCode(),
                one.onReels(),
                one.cost().plus(more.cost()),
                holdings);
    }
}
