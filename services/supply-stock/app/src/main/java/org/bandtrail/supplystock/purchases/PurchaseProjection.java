package org.bandtrail.supplystock.purchases;

import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Keeps orders with what has come of each line. What is still to come is worked out once for each order a page touches,
 * by the rule of {@link OrderedLine}.
 */
@Component
final class PurchaseProjection implements Projection {
    private final JdbcClient jdbc;

    PurchaseProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "purchase";
    }

    @Override
    public List<String> tables() {
        return List.of("purchase", "purchase_line");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(PurchaseEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        Set<String> touched = new LinkedHashSet<>();
        for (StoredEvent stored : page) {
            PurchaseEvent event = (PurchaseEvent) stored.payload();
            String purchase = event.purchaseId().value();
            touched.add(purchase);
            switch (event) {
                case PurchaseEvent.Ordered ordered -> insert(ordered);
                case PurchaseEvent.Delivered delivered -> receive(purchase, delivered.lines(), 1);
                case PurchaseEvent.SentBack back -> receive(purchase, back.lines(), -1);
                case PurchaseEvent.Expected expected ->
                    jdbc.sql("UPDATE purchase SET expected_on = ?, reason = ? WHERE purchase_id = ?")
                            .params(expected.expectedOn(), expected.reason(), purchase)
                            .update();
                case PurchaseEvent.Closed closed -> end(purchase, PurchaseState.CLOSED, closed.reason());
                case PurchaseEvent.Cancelled cancelled -> end(purchase, PurchaseState.CANCELLED, cancelled.reason());
            }
        }
        new StillToCome(jdbc).reckon(touched);
    }

    private void insert(PurchaseEvent.Ordered ordered) {
        jdbc.sql("""
                        INSERT INTO purchase (purchase_id, supplier_id, depot_id, state, currency, expected_on,
                            ordered_at, by_person)
                        VALUES (?, ?, ?, 'ordered', ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        ordered.purchaseId().value(),
                        ordered.supplier().value(),
                        ordered.depot().value(),
                        ordered.currency(),
                        ordered.expectedOn(),
                        ordered.occurred().happened().atOffset(ZoneOffset.UTC),
                        ordered.by().value())
                .update();
        List<OrderedLine> lines = ordered.lines();
        jdbc.sql("""
                        INSERT INTO purchase_line (purchase_id, line, material, kind, unit, content, units, ordered,
                            unit_price, quote, site_id, grant_ref, remaining, committed)
                        SELECT ?, l.*, 0, 0 FROM unnest(?::int[], ?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[],
                            ?::bigint[], ?::bigint[], ?::bigint[], ?::int[], ?::varchar[], ?::varchar[]) AS l
                        ON CONFLICT DO NOTHING""")
                .params(
                        ordered.purchaseId().value(),
                        lines.stream().map(OrderedLine::line).toArray(Integer[]::new),
                        texts(lines, line -> line.material().value()),
                        texts(lines, line -> line.kind().name()),
                        texts(lines, line -> line.packing().unit().name()),
                        numbers(lines, line -> line.packing().content()),
                        numbers(lines, OrderedLine::units),
                        numbers(lines, OrderedLine::ordered),
                        numbers(lines, OrderedLine::unitPrice),
                        lines.stream().map(OrderedLine::quote).toArray(Integer[]::new),
                        texts(
                                lines,
                                line -> line.site() == null ? null : line.site().value()),
                        texts(lines, OrderedLine::grant))
                .update();
    }

    private void receive(String purchase, List<Received> lines, int sign) {
        jdbc.sql("""
                        UPDATE purchase_line AS l
                        SET received_units = l.received_units + r.units, received = l.received + r.quantity
                        FROM unnest(?::int[], ?::bigint[], ?::bigint[]) AS r (line, units, quantity)
                        WHERE l.purchase_id = ? AND l.line = r.line""")
                .params(
                        lines.stream().map(Received::line).toArray(Integer[]::new),
                        numbers(lines, line -> sign * line.units()),
                        numbers(lines, line -> sign * line.quantity()),
                        purchase)
                .update();
    }

    private void end(String purchase, PurchaseState state, String reason) {
        jdbc.sql("UPDATE purchase SET state = ?, reason = ? WHERE purchase_id = ?")
                .params(state.word(), reason, purchase)
                .update();
    }

    private static <T> @Nullable String[] texts(List<T> rows, Function<T, @Nullable String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> Long[] numbers(List<T> rows, Function<T, Long> column) {
        return rows.stream().map(column).toArray(Long[]::new);
    }
}
