package org.bandtrail.supplystock.deliveries;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps deliveries, their lines and findings, and what the label of each reel and batch says: sets per delivery. */
@Component
final class DeliveryProjection implements Projection {
    private final JdbcClient jdbc;

    DeliveryProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "delivery";
    }

    @Override
    public List<String> tables() {
        return List.of("delivery", "delivery_line", "delivery_finding", "delivered_holding");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(DeliveryEvent.class, ReelEvent.class);
    }

    private record Piece(DeliveredLine line, DeliveredHolding holding) {}

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch (stored.payload()) {
                case DeliveryEvent event -> apply(event);
                case ReelEvent.Relocated moved
                when moved.what() == StockMove.RELEASED ->
                    released(moved.reelId().value());
                default -> {} // other moves change nothing about what was delivered
            }
        }
    }

    private void apply(DeliveryEvent event) {
        switch (event) {
            case DeliveryEvent.Recorded recorded -> {
                insertHead(recorded);
                insertLines(recorded);
                insertFindings(recorded);
                insertPieces(recorded);
            }
            case DeliveryEvent.Accepted accepted -> set(accepted.keys(), Delivery.State.ACCEPTED);
            case DeliveryEvent.Released released -> set(List.of(released.key()), Delivery.State.ACCEPTED);
            case DeliveryEvent.SentBack back -> set(back.keys(), Delivery.State.SENT_BACK);
        }
    }

    /** A reel released before deliveries were told of it: histories of that time have only the reel's own event. */
    private void released(String reel) {
        jdbc.sql("""
                        UPDATE delivered_holding SET state = 'accepted'
                        WHERE holding = 'reel' AND id = ? AND state = 'set aside'""").param(reel).update();
    }

    private void insertHead(DeliveryEvent.Recorded recorded) {
        jdbc.sql("""
                        INSERT INTO delivery (delivery_id, supplier_id, purchase_id, depot_id, delivery_note,
                            delivered_at, by_person)
                        VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(recorded.deliveryId().value())
                .param(recorded.supplier().value())
                .param(recorded.purchase() == null ? null : recorded.purchase().value())
                .param(recorded.depot().value())
                .param(recorded.deliveryNote())
                .param(recorded.occurred().happened().atOffset(ZoneOffset.UTC))
                .param(recorded.by().value())
                .update();
    }

    private void insertLines(DeliveryEvent.Recorded recorded) {
        List<DeliveredLine> lines = recorded.lines();
        jdbc.sql("""
                        INSERT INTO delivery_line (delivery_id, line, purchase_line, material, kind, units, quantity,
                            cost_minor, currency)
                        SELECT ?, * FROM unnest(?::int[], ?::int[], ?::varchar[], ?::varchar[], ?::bigint[], ?::bigint[],
                            ?::bigint[], ?::varchar[]) ON CONFLICT DO NOTHING""")
                .params(
                        recorded.deliveryId().value(),
                        lines.stream().map(DeliveredLine::line).toArray(Integer[]::new),
                        lines.stream().map(DeliveredLine::purchaseLine).toArray(Integer[]::new),
                        texts(lines, line -> line.material().value()),
                        texts(lines, line -> line.kind().name()),
                        numbers(lines, DeliveredLine::units),
                        numbers(lines, DeliveredLine::quantity),
                        numbers(lines, line -> line.cost().minor()),
                        texts(lines, line -> line.cost().currency()))
                .update();
    }

    private void insertFindings(DeliveryEvent.Recorded recorded) {
        List<Finding> findings = recorded.findings();
        Integer[] numbers = new Integer[findings.size()];
        for (int index = 0; index < numbers.length; index++) {
            numbers[index] = index + 1;
        }
        jdbc.sql("""
                        INSERT INTO delivery_finding (delivery_id, number, line, id, what, expected, found)
                        SELECT ?, * FROM unnest(?::int[], ?::int[], ?::varchar[], ?::varchar[], ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        recorded.deliveryId().value(),
                        numbers,
                        findings.stream().map(Finding::line).toArray(Integer[]::new),
                        texts(findings, Finding::id),
                        texts(findings, finding -> finding.what().name()),
                        texts(findings, Finding::expected),
                        texts(findings, Finding::found))
                .update();
    }

    private void insertPieces(DeliveryEvent.Recorded recorded) {
        List<Piece> pieces = new ArrayList<>();
        recorded.lines().forEach(line -> line.holdings().forEach(each -> pieces.add(new Piece(line, each))));
        Delivery now = Delivery.UNKNOWN.evolve(recorded);
        LocalDate day = recorded.occurred().happened().atOffset(ZoneOffset.UTC).toLocalDate();
        jdbc.sql("""
                        INSERT INTO delivered_holding (delivery_id, supplier_id, purchase_id, depot_id, delivered_on,
                            holding, id, line, purchase_line, material, kind, quantity, width_mm, lot, expires_on,
                            condition, state, cost_minor, currency)
                        SELECT ?, ?, ?, ?, ?, * FROM unnest(?::varchar[], ?::varchar[], ?::int[], ?::int[], ?::varchar[],
                            ?::varchar[], ?::bigint[], ?::bigint[], ?::varchar[], ?::date[], ?::varchar[], ?::varchar[],
                            ?::bigint[], ?::varchar[]) ON CONFLICT DO NOTHING""")
                .param(recorded.deliveryId().value())
                .param(recorded.supplier().value())
                .param(recorded.purchase() == null ? null : recorded.purchase().value())
                .param(recorded.depot().value())
                .param(day)
                .param(texts(pieces, piece -> piece.holding().holding()))
                .param(texts(pieces, piece -> piece.holding().id()))
                .param(pieces.stream().map(piece -> piece.line().line()).toArray(Integer[]::new))
                .param(pieces.stream().map(piece -> piece.line().purchaseLine()).toArray(Integer[]::new))
                .param(texts(pieces, piece -> piece.line().material().value()))
                .param(texts(pieces, piece -> piece.line().kind().name()))
                .param(numbers(pieces, piece -> piece.holding().quantity()))
                .param(numbers(pieces, piece -> piece.holding().widthMm()))
                .param(texts(pieces, piece -> piece.holding().lot()))
                .param(texts(pieces, piece -> text(piece.holding().expiresOn())))
                .param(texts(pieces, piece -> piece.holding().condition().name()))
                .param(texts(pieces, piece -> state(now, piece)))
                .param(numbers(pieces, piece -> piece.holding().cost().minor()))
                .param(texts(pieces, piece -> piece.holding().cost().currency()))
                .update();
    }

    private void set(List<String> keys, Delivery.State state) {
        jdbc.sql("""
                        UPDATE delivered_holding SET state = ? WHERE (holding, id) IN
                            (SELECT split_part(k, '/', 1), split_part(k, '/', 2) FROM unnest(?::varchar[]) AS k)""").params(state.word(), keys.toArray(String[]::new)).update();
    }

    private static String state(Delivery now, Piece piece) {
        Delivery.State state = now.state().get(piece.holding().key());
        return state == null ? Delivery.State.SET_ASIDE.word() : state.word();
    }

    private static @Nullable String text(@Nullable LocalDate day) {
        return day == null ? null : day.toString();
    }

    private static <T> @Nullable String[] texts(List<T> rows, Function<T, @Nullable String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> @Nullable Long[] numbers(List<T> rows, Function<T, @Nullable Long> column) {
        return rows.stream().map(column).toArray(Long[]::new);
    }
}
