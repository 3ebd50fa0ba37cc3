package org.bandtrail.supplystock.depots;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of depots. */
@Repository
public class Depots {
    private final JdbcClient jdbc;

    Depots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All depots, by identity. */
    public List<DepotRow> all() {
        return jdbc.sql("SELECT depot_id, name FROM depot ORDER BY depot_id")
                .query((row, number) -> new DepotRow(row.getString(1), row.getString(2)))
                .list();
    }
}
