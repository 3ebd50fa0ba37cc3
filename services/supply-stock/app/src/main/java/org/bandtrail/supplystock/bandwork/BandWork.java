package org.bandtrail.supplystock.bandwork;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps and reads what was told about bands. Writing joins the transaction of whoever hears the fact. */
@Repository
public class BandWork {
    private static final String EGG_MASS = "egg-mass";
    private final JdbcClient jdbc;

    BandWork(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Where and by whom a band was fitted. */
    public record Fitted(String bandId, String treeId, String siteId, String crewId, String personId, Instant at) {}

    /** A band was fitted. Told again, the earliest time stands. */
    public void fitted(Fitted band) {
        jdbc.sql("""
                        INSERT INTO band_life AS b (band_id, tree_id, site_id, crew_id, person_id, fitted_at)
                        VALUES (?, ?, ?, ?, ?, ?)
                        ON CONFLICT (band_id) DO UPDATE
                        SET tree_id = EXCLUDED.tree_id, site_id = EXCLUDED.site_id, crew_id = EXCLUDED.crew_id,
                            person_id = EXCLUDED.person_id, fitted_at = EXCLUDED.fitted_at
                        WHERE b.fitted_at IS NULL OR b.fitted_at > EXCLUDED.fitted_at""")
                .params(
                        band.bandId(),
                        band.treeId(),
                        band.siteId(),
                        band.crewId(),
                        band.personId(),
                        band.at().atOffset(ZoneOffset.UTC))
                .update();
    }

    /** A band came off its tree. Told again, the earliest time stands. */
    public void takenDown(String bandId, Instant at) {
        jdbc.sql("""
                        INSERT INTO band_life AS b (band_id, taken_down_at) VALUES (?, ?)
                        ON CONFLICT (band_id) DO UPDATE
                        SET taken_down_at = least(b.taken_down_at, EXCLUDED.taken_down_at)""").params(bandId, at.atOffset(ZoneOffset.UTC)).update();
    }

    /**
     * A band was read and counted.
     *
     * @param catches by life stage; egg masses are no animals and are left out
     */
    public void counted(
            String visitId,
            String bandId,
            @Nullable String siteId,
            Instant at,
            Map<String, Long> catches,
            boolean lowerBound) {
        long insects = catches.entrySet().stream()
                .filter(stage -> !stage.getKey().equals(EGG_MASS))
                .mapToLong(Map.Entry::getValue)
                .sum();
        jdbc.sql("""
                        INSERT INTO band_catch (visit_id, band_id, site_id, visited_at, insects, lower_bound)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(visitId)
                .param(bandId)
                .param(siteId)
                .param(at.atOffset(ZoneOffset.UTC))
                .param(insects)
                .param(lowerBound)
                .update();
    }

    /**
     * Work by site within a stretch of time. A band that still hangs counts until {@code until}, which is therefore
     * never later than now. A band whose taking down lies before its fitting hung for no time.
     *
     * @param from first moment of the stretch
     * @param until first moment after it
     */
    public List<SiteWork> bySite(Instant from, Instant until) {
        return jdbc.sql("""
                        WITH hung AS (
                            SELECT site_id, count(DISTINCT tree_id) AS trees, count(*) AS bands,
                                   sum(extract(epoch FROM least(coalesce(taken_down_at, :until), :until)
                                       - greatest(fitted_at, :from)))::bigint AS band_seconds
                            FROM band_life
                            WHERE fitted_at < :until
                              AND coalesce(taken_down_at, :until) > greatest(fitted_at, :from)
                            GROUP BY site_id),
                        caught AS (
                            SELECT coalesce(c.site_id, b.site_id, '') AS site_id, sum(c.insects)::bigint AS insects,
                                   count(*) FILTER (WHERE c.lower_bound) AS lower_bounds
                            FROM band_catch c LEFT JOIN band_life b USING (band_id)
                            WHERE c.visited_at >= :from AND c.visited_at < :until
                            GROUP BY 1)
                        SELECT coalesce(h.site_id, c.site_id) AS site_id, coalesce(h.trees, 0) AS trees,
                               coalesce(h.bands, 0) AS bands, coalesce(h.band_seconds, 0) AS band_seconds,
                               coalesce(c.insects, 0) AS insects, coalesce(c.lower_bounds, 0) AS lower_bounds
                        FROM hung h FULL JOIN caught c USING (site_id)
                        ORDER BY 1""")
                .param("from", from.atOffset(ZoneOffset.UTC))
                .param("until", until.atOffset(ZoneOffset.UTC))
                .query(SiteWork.class)
                .list();
    }
}
