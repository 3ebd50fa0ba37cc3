package org.bandtrail.inspections.bycatch;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.inspections.sightings.Bycatch;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.ObjectMapper;

/** Reads animals found on bands, newest first. */
@Repository
class BycatchList {
    private static final String ROWS = """
            SELECT v.*, w.tree_id, w.site_id, o.outcome, o.handed_to, o.handed_at,
                   v.bycatch_open AND o.visit_id IS NULL AS still_open
            FROM band_visit v
            JOIN watched_band w ON w.band_id = v.band_id
            LEFT JOIN bycatch_outcome o ON o.band_id = v.band_id AND o.visit_id = v.visit_id
            WHERE v.bycatch_seen
            """;
    private final JdbcClient jdbc;
    private final ObjectMapper json;

    BycatchList(JdbcClient jdbc, ObjectMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** One animal; {@code open} until somebody tells what became of it. */
    record BycatchRow(
            String visitId,
            String bandId,
            @Nullable String treeId,
            @Nullable String siteId,
            String personId,
            Instant happenedAt,
            Instant foundAt,
            @Nullable String animal,
            @Nullable Boolean alive,
            @Nullable String action,
            @Nullable String handedTo,
            @Nullable Instant handedAt,
            @Nullable String outcome,
            @Nullable String guardState,
            @Nullable String photo,
            boolean supervisorTold,
            boolean open) {}

    /** One page; {@code after} is the cursor {@code <time>~<visit>} of the last row before it. */
    List<BycatchRow> page(@Nullable String site, @Nullable Boolean open, @Nullable String after, int limit) {
        int tilde = after == null ? -1 : after.indexOf('~');
        if (after != null && tilde < 0) {
            throw new IllegalArgumentException("after [%s] is no cursor of this list.".formatted(after));
        }
        return jdbc.sql(ROWS + """
                          AND (CAST(:site AS varchar) IS NULL OR w.site_id = :site)
                          AND (CAST(:open AS boolean) IS NULL OR (v.bycatch_open AND o.visit_id IS NULL) = :open)
                          AND (CAST(:time AS varchar) IS NULL
                               OR (v.happened_at, v.visit_id) < (CAST(:time AS timestamptz), :visit))
                        ORDER BY v.happened_at DESC, v.visit_id DESC LIMIT :limit""")
                .param("site", site)
                .param("open", open)
                .param("time", after == null ? null : after.substring(0, tilde))
                .param("visit", after == null ? null : after.substring(tilde + 1))
                .param("limit", limit)
                .query(this::row)
                .list();
    }

    /** The band on which this visit found an animal, empty if no such visit is known. */
    Optional<String> bandOf(String visit) {
        return jdbc.sql("SELECT band_id FROM band_visit WHERE visit_id = ? AND bycatch_seen")
                .param(visit)
                .query(String.class)
                .optional();
    }

    private BycatchRow row(ResultSet row, int number) throws SQLException {
        Bycatch seen = json.readValue(row.getString("bycatch"), Bycatch.class);
        OffsetDateTime handedAt = row.getObject("handed_at", OffsetDateTime.class);
        String guard = row.getString("guard");
        Instant happened = row.getObject("happened_at", OffsetDateTime.class).toInstant();
        return new BycatchRow(
                row.getString("visit_id"),
                row.getString("band_id"),
                row.getString("tree_id"),
                row.getString("site_id"),
                row.getString("person_id"),
                happened,
                Objects.requireNonNullElse(seen.foundAt(), happened),
                seen.animal(),
                seen.alive(),
                seen.action(),
                row.getString("handed_to") == null ? seen.handedTo() : row.getString("handed_to"),
                handedAt == null ? seen.handedAt() : handedAt.toInstant(),
                row.getString("outcome") == null ? seen.outcome() : row.getString("outcome"),
                guard == null ? null : GuardState.valueOf(guard).spelt(),
                seen.photo(),
                seen.supervisorTold(),
                row.getBoolean("still_open"));
    }
}
