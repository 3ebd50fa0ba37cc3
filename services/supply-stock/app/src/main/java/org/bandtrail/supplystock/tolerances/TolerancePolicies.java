package org.bandtrail.supplystock.tolerances;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The policies, newest first; the default stands last. */
@Repository
public class TolerancePolicies {
    private final JdbcClient jdbc;

    TolerancePolicies(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One policy with where it comes from.
     *
     * @param byPerson who set it, null for the default
     * @param setAt null for the default
     */
    public record Policy(
            Tolerances tolerances,
            String source,
            String reason,
            @Nullable String byPerson,
            @Nullable Instant setAt) {}

    /** What holds now. */
    public Tolerances now() {
        return all().getFirst().tolerances();
    }

    /** Every policy, newest first; never empty. */
    public List<Policy> all() {
        return jdbc.sql("""
                        SELECT position, quantity_permille, length_mm, pieces, price_permille, price_minor,
                               second_person_from_minor, source, reason, by_person, set_at FROM tolerance
                        UNION ALL
                        SELECT 0, quantity_permille, length_mm, pieces, price_permille, price_minor,
                               second_person_from_minor, source, reason, NULL, NULL FROM tolerance_default
                        ORDER BY position DESC""").query(TolerancePolicies::policy).list();
    }

    private static Policy policy(ResultSet row, int number) throws SQLException {
        OffsetDateTime at = row.getObject("set_at", OffsetDateTime.class);
        return new Policy(
                new Tolerances(
                        row.getLong("quantity_permille"),
                        row.getLong("length_mm"),
                        row.getLong("pieces"),
                        row.getLong("price_permille"),
                        row.getLong("price_minor"),
                        row.getLong("second_person_from_minor")),
                row.getString("source"),
                row.getString("reason"),
                row.getString("by_person"),
                at == null ? null : at.toInstant());
    }
}
