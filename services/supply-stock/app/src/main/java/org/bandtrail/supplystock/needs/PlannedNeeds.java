package org.bandtrail.supplystock.needs;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps what plans need. */
@Repository
public class PlannedNeeds {
    private final JdbcClient jdbc;

    PlannedNeeds(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Replaces what a plan needs, unless a newer word about it was heard before.
     *
     * @param needs all it needs now, none if it is done or called off; two of one material and depot are added up
     * @return whether this word counts
     */
    public boolean replace(String planId, long sequence, List<PlannedNeed> needs) {
        boolean newer = jdbc.sql("""
                        INSERT INTO need_plan (plan_id, sequence) VALUES (?, ?)
                        ON CONFLICT (plan_id) DO UPDATE SET sequence = excluded.sequence
                        WHERE need_plan.sequence < excluded.sequence""").params(planId, sequence).update() > 0;
        if (newer) {
            jdbc.sql("DELETE FROM planned_need WHERE plan_id = ?").param(planId).update();
            needs.forEach(this::insert);
        }
        return newer;
    }

    private void insert(PlannedNeed need) {
        jdbc.sql("""
                        INSERT INTO planned_need (plan_id, material, kind, depot_id, day, last_day, quantity,
                            longest_mm)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT (plan_id, material, depot_id) DO UPDATE SET
                            day = least(planned_need.day, excluded.day),
                            last_day = greatest(planned_need.last_day, excluded.last_day),
                            quantity = planned_need.quantity + excluded.quantity,
                            longest_mm = greatest(planned_need.longest_mm, excluded.longest_mm)""")
                .params(
                        need.planId(),
                        need.material().value(),
                        need.kind().name(),
                        need.depot().value(),
                        need.day(),
                        need.lastDay(),
                        need.quantity(),
                        need.longestMm())
                .update();
    }

    /** All that is planned and not done, by material, depot and day; work of past days is among it until it is done. */
    public List<PlannedNeed> all() {
        return jdbc.sql("SELECT * FROM planned_need ORDER BY material, depot_id, day, plan_id")
                .query(PlannedNeeds::row)
                .list();
    }

    private static PlannedNeed row(ResultSet row, int number) throws SQLException {
        return new PlannedNeed(
                row.getString("plan_id"),
                new MaterialCode(row.getString("material")),
                MaterialKind.valueOf(row.getString("kind")),
                new DepotId(row.getString("depot_id")),
                row.getObject("day", LocalDate.class),
                row.getObject("last_day", LocalDate.class),
                row.getLong("quantity"),
                row.getLong("longest_mm"));
    }
}
