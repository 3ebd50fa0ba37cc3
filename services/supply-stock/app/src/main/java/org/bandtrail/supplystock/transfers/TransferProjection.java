package org.bandtrail.supplystock.transfers;

import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps transfers with what was sent and what arrived. */
@Component
final class TransferProjection implements Projection {
    private final JdbcClient jdbc;

    TransferProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "transfer";
    }

    @Override
    public List<String> tables() {
        return List.of("transfer", "transfer_line");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(TransferEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((TransferEvent) stored.payload()) {
                case TransferEvent.Sent sent -> insert(sent);
                case TransferEvent.Arrived arrived -> arrive(arrived);
                case TransferEvent.CalledOff off ->
                    jdbc.sql("""
                                    UPDATE transfer SET state = 'called-off', ended_at = ?, ended_by = ?, reason = ?
                                    WHERE transfer_id = ?""")
                            .params(
                                    off.occurred().happened().atOffset(ZoneOffset.UTC),
                                    off.by().value(),
                                    off.reason(),
                                    off.transferId().value())
                            .update();
            }
        }
    }

    private void insert(TransferEvent.Sent sent) {
        jdbc.sql("""
                        INSERT INTO transfer (transfer_id, source, target, carrier, state, sent_at, sent_by)
                        VALUES (?, ?, ?, ?, 'on-its-way', ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        sent.transferId().value(),
                        sent.from().toString(),
                        sent.to().toString(),
                        sent.carrier().value(),
                        sent.occurred().happened().atOffset(ZoneOffset.UTC),
                        sent.by().value())
                .update();
        jdbc.sql("""
                        INSERT INTO transfer_line (transfer_id, holding, id, sent)
                        SELECT ?, * FROM unnest(?::varchar[], ?::varchar[], ?::bigint[]) ON CONFLICT DO NOTHING""")
                .params(
                        sent.transferId().value(),
                        texts(sent.lines(), TransferLine::holding),
                        texts(sent.lines(), TransferLine::id),
                        quantities(sent.lines()))
                .update();
    }

    private void arrive(TransferEvent.Arrived arrived) {
        jdbc.sql("UPDATE transfer SET state = 'arrived', ended_at = ?, ended_by = ? WHERE transfer_id = ?")
                .params(
                        arrived.occurred().happened().atOffset(ZoneOffset.UTC),
                        arrived.by().value(),
                        arrived.transferId().value())
                .update();
        jdbc.sql("""
                        UPDATE transfer_line AS l SET arrived = a.quantity
                        FROM unnest(?::varchar[], ?::varchar[], ?::bigint[]) AS a (holding, id, quantity)
                        WHERE l.transfer_id = ? AND l.holding = a.holding AND l.id = a.id""")
                .params(
                        texts(arrived.lines(), TransferLine::holding),
                        texts(arrived.lines(), TransferLine::id),
                        quantities(arrived.lines()),
                        arrived.transferId().value())
                .update();
    }

    private static String[] texts(List<TransferLine> lines, Function<TransferLine, String> column) {
        return lines.stream().map(column).toArray(String[]::new);
    }

    private static Long[] quantities(List<TransferLine> lines) {
        return lines.stream().map(TransferLine::quantity).toArray(Long[]::new);
    }
}
