package org.bandtrail.supplystock.costpolicies;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the policies. */
@Repository
public class CostPolicies {
    private final JdbcClient jdbc;

    CostPolicies(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One policy.
     *
     * @param year in which it begins
     * @param replaced whether a later decision for the same year took its place
     */
    public record Row(int year, CostMethod method, String reason, String byPerson, Instant setAt, boolean replaced) {}

    /** What holds in a year. */
    public CostMethod of(int year) {
        return jdbc.sql("SELECT method FROM cost_policy WHERE year <= ? ORDER BY year DESC, position DESC LIMIT 1")
                .param(year)
                .query(String.class)
                .optional()
                .map(CostMethod::valueOf)
                .orElse(CostMethod.DEFAULT);
    }

    /** Every policy ever set, the latest year first. */
    public List<Row> all() {
        return jdbc.sql("""
            SELECT year, method, reason, by_person, set_at,
                   position < max(position) OVER (PARTITION BY year) AS replaced
            FROM cost_policy ORDER BY year DESC, position DESC\
            """)
                .query((row, number) -> new Row(
                        row.getInt("year"),
                        CostMethod.valueOf(row.getString("method")),
                        row.getString("reason"),
                        row.getString("by_person"),
                        row.getObject("set_at", OffsetDateTime.class).toInstant(),
                        row.getBoolean("replaced")))
                .list();
    }
}
