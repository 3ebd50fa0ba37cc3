package org.bandtrail.supplystock.vehicles;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of vehicles. */
@Component
final class VehicleProjection implements Projection {
    private final JdbcClient jdbc;

    VehicleProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "vehicle";
    }

    @Override
    public List<String> tables() {
        return List.of("vehicle");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(VehicleEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((VehicleEvent) stored.payload()) {
                case VehicleEvent.Registered registered ->
                    jdbc.sql("INSERT INTO vehicle (vehicle_id, name, depot_id) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                            .params(
                                    registered.vehicleId().value(),
                                    registered.name(),
                                    registered.depot().value())
                            .update();
            }
        }
    }
}
