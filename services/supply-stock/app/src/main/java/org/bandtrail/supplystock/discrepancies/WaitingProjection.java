package org.bandtrail.supplystock.discrepancies;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps which questions wait until when. */
@Component
final class WaitingProjection implements Projection {
    private final JdbcClient jdbc;

    WaitingProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "waiting-question";
    }

    @Override
    public List<String> tables() {
        return List.of("waiting_question");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(WaitingEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((WaitingEvent) stored.payload()) {
                case WaitingEvent.Waits waits -> write(waits);
            }
        }
    }

    private void write(WaitingEvent.Waits waits) {
        jdbc.sql("""
                        INSERT INTO waiting_question (material, id, place, quantity, until, reason, by_person)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT (material, id, place) DO UPDATE SET quantity = EXCLUDED.quantity,
                            until = EXCLUDED.until, reason = EXCLUDED.reason, by_person = EXCLUDED.by_person""")
                .params(
                        waits.material(),
                        waits.id(),
                        waits.place().toString(),
                        waits.quantity(),
                        waits.until(),
                        waits.reason(),
                        waits.by().value())
                .update();
    }
}
