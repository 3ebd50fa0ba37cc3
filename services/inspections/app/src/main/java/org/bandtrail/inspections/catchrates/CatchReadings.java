package org.bandtrail.inspections.catchrates;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.inspections.catchrates.CatchRate.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Reads the visits of a time as readings. A reading's exposure runs from the reading, tape renewal or fitting before
 * it; where none is known the visit counts as not read, because its days are not known.
 */
@Repository
class CatchReadings {
    private static final double SECONDS_PER_DAY = 86_400;
    private final JdbcClient jdbc;

    CatchReadings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Reading> between(@Nullable String site, Instant from, Instant to) {
        return jdbc.sql("""
                        WITH marks AS (
                            SELECT v.band_id, v.happened_at, v.answer = 'READ' AS read, v.catch_total, v.lower_bound,
                                   true AS visit, v.answer = 'READ' OR r.kind IS NOT NULL AS fresh
                            FROM band_visit v
                            LEFT JOIN band_renewal r
                                ON r.band_id = v.band_id AND r.fact_id = v.visit_id AND r.kind = 'TAPE'
                            UNION ALL
                            SELECT band_id, fitted_at, false, 0, false, false, true
                            FROM watched_band WHERE fitted_at IS NOT NULL),
                        exposed AS (
                            SELECT m.*, max(happened_at) FILTER (WHERE fresh) OVER (
                                       PARTITION BY band_id ORDER BY happened_at
                                       ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING) AS since
                            FROM marks m)
                        SELECT read AND since < happened_at AS read, catch_total, lower_bound,
                               extract(epoch FROM happened_at - since) AS seconds
                        FROM exposed e JOIN watched_band w USING (band_id)
                        WHERE visit AND happened_at >= :from AND happened_at < :to
                            AND (CAST(:site AS varchar) IS NULL OR w.site_id = :site)""")
                .param("from", OffsetDateTime.ofInstant(from, ZoneOffset.UTC))
                .param("to", OffsetDateTime.ofInstant(to, ZoneOffset.UTC))
                .param("site", site)
                .query((row, number) -> {
                    boolean read = row.getBoolean("read");
                    double days = read ? row.getDouble("seconds") / SECONDS_PER_DAY : 1;
                    return new Reading(read, row.getLong("catch_total"), days, row.getBoolean("lower_bound"));
                })
                .list();
    }
}
