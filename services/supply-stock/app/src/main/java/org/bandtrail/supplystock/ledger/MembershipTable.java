package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.Columns.texts;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads and writes who was in which crew. */
final class MembershipTable {
    /** How the note of a fact begins that belongs to a band. */
    private static final String BAND = "band ";

    private final JdbcClient jdbc;

    MembershipTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All crews ever, they are few; and the crews the field named for the bands of these facts. */
    void load(Membership crews, List<Fact> facts) {
        jdbc.sql("SELECT person_id, crew_id, from_at, until_at FROM ledger_crew ORDER BY from_at, crew_id, person_id")
                .query(row -> {
                    OffsetDateTime until = row.getObject("until_at", OffsetDateTime.class);
                    crews.load(new Membership.Stay(
                            row.getString("person_id"),
                            row.getString("crew_id"),
                            row.getObject("from_at", OffsetDateTime.class).toInstant(),
                            until == null ? null : until.toInstant()));
                });
        List<Fact> bands = facts.stream()
                .filter(fact -> fact.note() != null && fact.note().startsWith(BAND))
                .toList();
        if (bands.isEmpty()) {
            return;
        }
        jdbc.sql("""
            SELECT t.note, l.fitted_at, l.crew_id FROM unnest(?::varchar[]) AS t (note)
            JOIN band_life l ON l.band_id = substr(t.note, ?) WHERE l.crew_id IS NOT NULL AND l.fitted_at IS NOT NULL\
            """)
                .params(texts(bands, fact -> Objects.requireNonNull(fact.note())), BAND.length() + 1)
                .query(row -> {
                    crews.named(
                            row.getString("note"),
                            row.getObject("fitted_at", OffsetDateTime.class).toInstant(),
                            row.getString("crew_id"));
                });
    }

    /** Writes each stay that is new or has ended. */
    void write(List<Membership.Stay> stays) {
        if (stays.isEmpty()) {
            return;
        }
        jdbc.sql("""
            INSERT INTO ledger_crew (person_id, crew_id, from_at, until_at)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::timestamptz[], ?::timestamptz[])
            ON CONFLICT (person_id, crew_id, from_at) DO UPDATE SET until_at = EXCLUDED.until_at
            WHERE ledger_crew.until_at IS DISTINCT FROM EXCLUDED.until_at\
            """)
                .params(
                        texts(stays, Membership.Stay::person),
                        texts(stays, Membership.Stay::crew),
                        texts(stays, stay -> stay.from().toString()),
                        texts(
                                stays,
                                stay -> stay.until() == null
                                        ? null
                                        : stay.until().toString()))
                .update();
    }
}
