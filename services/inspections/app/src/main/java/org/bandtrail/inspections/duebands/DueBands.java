package org.bandtrail.inspections.duebands;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads bands with what their next look depends on. The rule itself is in {@link Due}, not here. */
@Repository
public class DueBands {
    private static final String ROWS = """
            SELECT w.*, last.happened_at AS last_visit_at, last.answer, reading.last_read_at, load.saturation_percent,
                   seen.guard, totals.*, pieces.*
            FROM watched_band w
            LEFT JOIN LATERAL (
                SELECT happened_at, answer FROM band_visit v WHERE v.band_id = w.band_id
                ORDER BY happened_at DESC, visit_id DESC LIMIT 1) last ON true
            LEFT JOIN LATERAL (
                SELECT greatest(
                    (SELECT max(happened_at) FROM band_visit v WHERE v.band_id = w.band_id AND v.answer = 'READ'),
                    (SELECT max(happened_at) FROM band_renewal r WHERE r.band_id = w.band_id AND r.kind = 'TAPE'))
                    AS last_read_at) reading ON true
            LEFT JOIN LATERAL (
                SELECT CASE WHEN r.kind IS NULL THEN v.saturation_percent ELSE 0 END AS saturation_percent
                FROM band_visit v
                LEFT JOIN band_renewal r ON r.band_id = v.band_id AND r.fact_id = v.visit_id AND r.kind = 'TAPE'
                WHERE v.band_id = w.band_id AND (v.saturation_percent IS NOT NULL OR r.kind IS NOT NULL)
                ORDER BY v.happened_at DESC, v.visit_id DESC LIMIT 1) load ON true
            LEFT JOIN LATERAL (
                SELECT CASE WHEN r.kind IS NULL THEN v.guard ELSE 'SOUND' END AS guard
                FROM band_visit v
                LEFT JOIN band_renewal r ON r.band_id = v.band_id AND r.fact_id = v.visit_id AND r.kind = 'MESH'
                WHERE v.band_id = w.band_id AND (v.guard IS NOT NULL OR r.kind IS NOT NULL)
                ORDER BY v.happened_at DESC, v.visit_id DESC LIMIT 1) seen ON true
            CROSS JOIN LATERAL (
                SELECT count(*) AS visits,
                       coalesce(sum(catch_total) FILTER (WHERE answer = 'READ'), 0) AS catch_total,
                       coalesce(bool_or(lower_bound), false) AS lower_bound,
                       coalesce(bool_or(bycatch_open AND NOT EXISTS (
                           SELECT 1 FROM bycatch_outcome o
                           WHERE o.band_id = v.band_id AND o.visit_id = v.visit_id)), false) AS bycatch_open
                FROM band_visit v WHERE v.band_id = w.band_id) totals
            CROSS JOIN LATERAL (
                SELECT max(material_id) FILTER (WHERE kind = 'TAPE') AS tape_reel,
                       coalesce(sum(hangs) FILTER (WHERE kind = 'TAPE'), 0) AS tape_mm,
                       max(material_id) FILTER (WHERE kind = 'MESH') AS mesh_reel,
                       coalesce(sum(hangs) FILTER (WHERE kind = 'MESH'), 0) AS mesh_mm,
                       coalesce(sum(hangs) FILTER (WHERE kind = 'FASTENER'), 0) AS pieces
                FROM (SELECT kind, material_id, sum(CASE WHEN target LIKE 'tree:%' THEN quantity ELSE 0 END
                                                    - CASE WHEN source LIKE 'tree:%' THEN quantity ELSE 0 END) AS hangs
                      FROM band_move m WHERE m.band_id = w.band_id
                      GROUP BY kind, material_id) each WHERE hangs > 0) pieces
            """;
    private final JdbcClient jdbc;

    DueBands(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All bands of a site, or of all sites. */
    List<BandRow> all(@Nullable String site) {
        return jdbc.sql(ROWS + "WHERE CAST(:site AS varchar) IS NULL OR w.site_id = :site ORDER BY w.band_id")
                .param("site", site)
                .query(DueBands::row)
                .list();
    }

    /** One band, empty if nobody has told of it. */
    Optional<BandRow> one(String band) {
        return jdbc.sql(ROWS + "WHERE w.band_id = ?")
                .param(band)
                .query(DueBands::row)
                .optional();
    }

    private static BandRow row(ResultSet row, int number) throws SQLException {
        String answer = row.getString("answer");
        String guard = row.getString("guard");
        return new BandRow(
                row.getString("band_id"),
                row.getString("tree_id"),
                row.getString("site_id"),
                instant(row, "fitted_at"),
                instant(row, "down_at"),
                instant(row, "last_visit_at"),
                answer == null ? null : Answer.valueOf(answer),
                instant(row, "last_read_at"),
                row.getObject("saturation_percent", Integer.class),
                guard == null ? null : GuardState.valueOf(guard),
                row.getLong("visits"),
                row.getLong("catch_total"),
                row.getBoolean("lower_bound"),
                row.getBoolean("bycatch_open"),
                row.getString("tape_reel"),
                row.getLong("tape_mm"),
                row.getString("mesh_reel"),
                row.getLong("mesh_mm"),
                row.getLong("pieces"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
