package org.bandtrail.supplystock.landedcosts;

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
    private final JdbcClient jdbc;

    DeliveredLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The lines of these deliveries, in order. */
    List<DeliveredLine> of(List<String> deliveries) {
        Map<String, DeliveredLine> lines = new LinkedHashMap<>();
        jdbc.sql("""
                        SELECT delivery_id, line, material, kind, holding, id, quantity, cost_minor, currency
                        FROM delivered_holding WHERE delivery_id = ANY (?::varchar[]) AND state <> 'sent back'
                        ORDER BY delivery_id, line, holding, id""")
                .param(deliveries.toArray(String[]::new))
                .query(row -> {
                    Money cost = Money.of(row.getLong("cost_minor"), row.getString("currency"));
                    DeliveredLine one = new DeliveredLine(
                            row.getString("delivery_id"),
                            row.getInt("line"),
                            row.getString("material"),
                            !row.getString("kind").equals("FASTENER"),
                            cost,
                            List.of(new DeliveredLine.Holding(
                                    row.getString("holding").equals("reel"),
                                    row.getString("id"),
                                    row.getLong("quantity"))));
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
