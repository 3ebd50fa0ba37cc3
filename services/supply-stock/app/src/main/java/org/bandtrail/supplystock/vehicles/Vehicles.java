package org.bandtrail.supplystock.vehicles;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of vehicles, with how much is on each. */
@Repository
public class Vehicles {
    private final JdbcClient jdbc;

    Vehicles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All vehicles, by identity; a programme has few. */
    public List<VehicleRow> all() {
        return jdbc.sql("""
                        SELECT v.vehicle_id, v.name, v.depot_id,
                               (SELECT count(*) FROM reel_place p
                                 WHERE p.place_kind = 'vehicle' AND p.place_id = v.vehicle_id AND p.quantity <> 0),
                               (SELECT coalesce(sum(p.quantity), 0) FROM reel_place p
                                 WHERE p.place_kind = 'vehicle' AND p.place_id = v.vehicle_id),
                               (SELECT coalesce(sum(p.quantity), 0) FROM batch_place p
                                 WHERE p.place_kind = 'vehicle' AND p.place_id = v.vehicle_id)
                        FROM vehicle v ORDER BY v.vehicle_id""")
                .query((row, number) -> new VehicleRow(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3),
                        row.getLong(4),
                        row.getLong(5),
                        row.getLong(6)))
                .list();
    }

    /** Whether the vehicle is registered. */
    public boolean isKnown(VehicleId vehicle) {
        return all().stream().anyMatch(row -> row.vehicleId().equals(vehicle.value()));
    }
}
