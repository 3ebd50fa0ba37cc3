package org.bandtrail.supplystock.crews;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of crews. */
@Repository
public class Crews {
    private final JdbcClient jdbc;

    Crews(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All crews, by identity. */
    public List<CrewRow> all() {
        return jdbc.sql("SELECT crew_id, name, depot_id, people FROM crew ORDER BY crew_id")
                .query((row, number) ->
                        new CrewRow(row.getString(1), row.getString(2), row.getString(3), List.of((String[])
                                row.getArray(4).getArray())))
                .list();
    }
}
