package org.bandtrail.siteinstalls.consents;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How every site stands on a day, and for how long ahead one is warned. */
@Repository
class Standings {
    /** Sites of the register, and sites that only the bands know. */
    private static final String SELECT = """
            SELECT known.site_id, coalesce(site.name, known.site_id) AS site_name,
                   (SELECT count(*) FROM band WHERE band.site_id = known.site_id AND band.state = 'up') AS bands_up,
                   holding.consent_id, holding.last_day,
                   (SELECT max(least(valid_until, withdrawn_from - 1)) FROM consent
                    WHERE consent.site_id = known.site_id AND valid_from <= :day) AS ended_on
            FROM (SELECT site_id FROM site UNION SELECT site_id FROM band WHERE state = 'up' AND site_id IS NOT NULL)
                 AS known
            LEFT JOIN site ON site.site_id = known.site_id
            LEFT JOIN LATERAL (
                SELECT consent_id, least(valid_until, withdrawn_from - 1) AS last_day FROM consent
                WHERE consent.site_id = known.site_id AND valid_from <= :day
                  AND (valid_until IS NULL OR valid_until >= :day)
                  AND (withdrawn_from IS NULL OR withdrawn_from > :day)
                ORDER BY least(valid_until, withdrawn_from - 1) DESC NULLS FIRST, consent_id LIMIT 1
            ) AS holding ON true
            """;

    private final JdbcClient jdbc;

    Standings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * For how long ahead one is warned.
     *
     * @param since from which day on
     * @param days before the last day
     * @param source where the figure is from
     * @param reason why so many
     */
    record Warning(LocalDate since, int days, String source, String reason) {}

    /** The warning in force on a day. */
    Warning warning(LocalDate day) {
        return jdbc.sql("SELECT * FROM consent_warning WHERE since <= ? ORDER BY since DESC LIMIT 1")
                .param(day)
                .query((row, number) -> new Warning(
                        row.getObject("since", LocalDate.class),
                        row.getInt("days"),
                        row.getString("source"),
                        row.getString("reason")))
                .single();
    }

    /** Keeps another number of days from a day on; the same day again replaces nothing and is refused by the caller. */
    boolean warn(Warning warning, String by) {
        return jdbc.sql("""
                                INSERT INTO consent_warning (since, days, source, reason, entered_by)
                                VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                        .param(warning.since())
                        .param(warning.days())
                        .param(warning.source())
                        .param(warning.reason())
                        .param(by)
                        .update()
                == 1;
    }

    /** One page by site. */
    List<SiteStanding> page(LocalDate day, @Nullable String after, int limit) {
        int warnDays = warning(day).days();
        return jdbc.sql(SELECT + "WHERE known.site_id > :after ORDER BY known.site_id LIMIT :limit")
                .param("day", day)
                .param("after", after == null ? "" : after)
                .param("limit", limit)
                .query((row, number) -> standing(row, day, warnDays))
                .list();
    }

    private static SiteStanding standing(ResultSet row, LocalDate day, int warnDays) throws SQLException {
        @Nullable String consentId = row.getString("consent_id");
        @Nullable LocalDate lastDay = row.getObject(consentId == null ? "ended_on" : "last_day", LocalDate.class);
        long bandsUp = row.getLong("bands_up");
        return new SiteStanding(
                row.getString("site_id"),
                row.getString("site_name"),
                bandsUp,
                SiteStanding.of(day, consentId != null, lastDay, warnDays, bandsUp),
                consentId,
                lastDay);
    }
}
