package org.bandtrail.supplystock.countrules;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rules of counting, newest first; the default stands last. */
@Repository
public class CountRulesInForce {
    private static final String FIGURES = """
            tolerance_mm, tolerance_pieces, tolerance_permille, second_person_from_minor, basis, share_a, share_b,
            days_a, days_b, days_c, source, reason""";

    private final JdbcClient jdbc;

    CountRulesInForce(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What holds now. */
    public CountRules now() {
        return all().getFirst().rules();
    }

    /** All rules there ever were, newest first; never empty. */
    public List<Version> all() {
        return jdbc.sql(("SELECT position, by_person, set_at, " + FIGURES + " FROM count_rules"
                        + " UNION ALL SELECT 0, NULL, NULL, " + FIGURES + " FROM count_rules_default"
                        + " ORDER BY position DESC"))
                .query(CountRulesInForce::version)
                .list();
    }

    private static Version version(ResultSet row, int number) throws SQLException {
        OffsetDateTime at = row.getObject("set_at", OffsetDateTime.class);
        return new Version(
                new CountRules(
                        row.getLong("tolerance_mm"),
                        row.getLong("tolerance_pieces"),
                        row.getInt("tolerance_permille"),
                        row.getLong("second_person_from_minor"),
                        CountRules.ValueBasis.valueOf(row.getString("basis")),
                        row.getInt("share_a"),
                        row.getInt("share_b"),
                        row.getInt("days_a"),
                        row.getInt("days_b"),
                        row.getInt("days_c")),
                row.getString("source"),
                row.getString("reason"),
                row.getString("by_person"),
                at == null ? null : at.toInstant());
    }

    /**
     * Rules with where they come from.
     *
     * @param byPerson who set them, null for the default
     * @param setAt null for the default
     */
    public record Version(
            CountRules rules,
            String source,
            String reason,
            @Nullable String byPerson,
            @Nullable Instant setAt) {}
}
