package org.bandtrail.supplystock.recalls;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the list of recalls and what each set aside. */
@Component
final class RecallProjection implements Projection {
    private final JdbcClient jdbc;

    RecallProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "recall";
    }

    @Override
    public List<String> tables() {
        return List.of("recall", "recall_aside");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(RecallEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((RecallEvent) stored.payload()) {
                case RecallEvent.Started started -> start(started);
                case RecallEvent.GoodsSetAside more -> aside(stored.position(), more);
                case RecallEvent.Lifted lifted ->
                    jdbc.sql("""
                                    UPDATE recall SET lifted_at = ?::timestamptz, lifted_by = ?, lift_reason = ?
                                    WHERE recall_id = ?""")
                            .params(
                                    lifted.occurred().happened().toString(),
                                    lifted.by().value(),
                                    lifted.reason(),
                                    lifted.recallId().value())
                            .update();
            }
        }
    }

    private void start(RecallEvent.Started started) {
        jdbc.sql("""
                        INSERT INTO recall (recall_id, lot, supplier_id, reason, by_person, started_at)
                        VALUES (?, ?, ?, ?, ?, ?::timestamptz) ON CONFLICT DO NOTHING""")
                .param(started.recallId().value())
                .param(started.lot())
                .param(started.supplier() == null ? null : started.supplier().value())
                .param(started.reason())
                .param(started.by().value())
                .param(started.occurred().happened().toString())
                .update();
    }

    private void aside(long position, RecallEvent.GoodsSetAside more) {
        List<AsideLine> lines = more.lines();
        jdbc.sql("""
                        INSERT INTO recall_aside (recall_id, position, holding, id, depot_id, quantity)
                        SELECT ?, ?, * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        more.recallId().value(),
                        position,
                        lines.stream().map(AsideLine::holding).toArray(String[]::new),
                        lines.stream().map(AsideLine::id).toArray(String[]::new),
                        lines.stream().map(line -> line.depot().value()).toArray(String[]::new),
                        lines.stream().map(AsideLine::quantity).toArray(Long[]::new))
                .update();
    }
}
