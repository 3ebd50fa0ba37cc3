package org.bandtrail.supplystock.depots;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of depots. */
@Component
final class DepotProjection implements Projection {
    private final JdbcClient jdbc;

    DepotProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "depot";
    }

    @Override
    public List<String> tables() {
        return List.of("depot");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(DepotEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((DepotEvent) stored.payload()) {
                case DepotEvent.Opened opened ->
                    jdbc.sql("INSERT INTO depot (depot_id, name) VALUES (?, ?) ON CONFLICT DO NOTHING")
                            .params(opened.depotId().value(), opened.name())
                            .update();
            }
        }
    }
}
