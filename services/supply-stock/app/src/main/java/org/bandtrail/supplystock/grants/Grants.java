package org.bandtrail.supplystock.grants;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.Money;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of grants. */
@Repository
public class Grants {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    Grants(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** Grants by identity, those after this one; empty text for the first page. */
    public List<GrantRow> after(String after, int limit) {
        return jdbc.sql("SELECT * FROM funding_grant WHERE grant_id > ? ORDER BY grant_id LIMIT ?")
                .params(after, limit)
                .query(Grants::row)
                .list();
    }

    /** One grant, empty if nobody entered it. */
    public Optional<GrantRow> one(GrantId grant) {
        return jdbc.sql("SELECT * FROM funding_grant WHERE grant_id = ?")
                .param(grant.value())
                .query(Grants::row)
                .optional();
    }

    /**
     * One grant; one that was entered a moment ago may not be in the register yet, so the answer waits for it.
     *
     * @throws GrantRefused.GrantUnknown if nobody entered it
     */
    public GrantRow known(GrantId grant) {
        Optional<GrantRow> known = one(grant);
        if (known.isEmpty() && projectors.getObject().caughtUp(PATIENCE)) {
            known = one(grant);
        }
        return known.orElseThrow(() -> new GrantRefused.GrantUnknown(grant));
    }

    /** What was agreed about a grant, the oldest first. */
    List<GrantRow.Agreed> history(GrantId grant) {
        return jdbc.sql("SELECT * FROM funding_grant_history WHERE grant_id = ? ORDER BY position")
                .param(grant.value())
                .query((row, number) -> new GrantRow.Agreed(
                        row.getString("name"),
                        Money.of(row.getLong("amount_minor"), row.getString("currency")),
                        row.getObject("good_from", LocalDate.class),
                        row.getObject("good_until", LocalDate.class),
                        row.getString("reason"),
                        row.getString("by_person"),
                        row.getObject("at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private static GrantRow row(ResultSet row, int number) throws SQLException {
        return new GrantRow(
                row.getString("grant_id"),
                row.getString("name"),
                Money.of(row.getLong("amount_minor"), row.getString("currency")),
                row.getObject("good_from", LocalDate.class),
                row.getObject("good_until", LocalDate.class));
    }
}
