package org.bandtrail.supplystock.bins;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of bins. */
@Component
final class BinProjection implements Projection {
    private final JdbcClient jdbc;

    BinProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "bin";
    }

    @Override
    public List<String> tables() {
        return List.of("bin");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BinEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((BinEvent) stored.payload()) {
                case BinEvent.Marked marked ->
                    jdbc.sql("INSERT INTO bin (bin_id, depot_id, words) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                            .params(
                                    marked.binId().value(),
                                    marked.binId().depot().value(),
                                    marked.words())
                            .update();
            }
        }
    }
}
