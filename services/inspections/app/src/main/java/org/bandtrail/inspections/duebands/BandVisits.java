package org.bandtrail.inspections.duebands;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Reads the visits and the moves of one band. */
@Repository
class BandVisits {
    private static final String VISITS = """
            SELECT v.*, ARRAY(SELECT lower(kind) FROM band_renewal r
                              WHERE r.band_id = v.band_id AND r.fact_id = v.visit_id ORDER BY kind) AS replaced
            FROM band_visit v WHERE band_id = ? ORDER BY happened_at DESC, visit_id DESC""";
    private final JdbcClient jdbc;
    private final ObjectMapper json;

    BandVisits(JdbcClient jdbc, ObjectMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** One visit; {@code replaced} names the kinds of material that were renewed. */
    record VisitRow(
            String visitId,
            Instant happenedAt,
            Instant recordedAt,
            String personId,
            @Nullable String crewId,
            String by,
            String answer,
            @Nullable Integer saturationPercent,
            JsonNode catches,
            long catchTotal,
            boolean catchIsLowerBound,
            @Nullable String guardState,
            @Nullable JsonNode bycatch,
            List<String> replaced,
            List<String> flags) {}

    /** One move; {@code quantity} in millimetres for tape and mesh, in pieces for fasteners. */
    record MoveRow(
            String factId,
            String kind,
            String materialId,
            long quantity,
            String source,
            String target,
            Instant happenedAt,
            Instant recordedAt) {}

    /** Newest first. */
    List<VisitRow> visits(String band) {
        return jdbc.sql(VISITS).param(band).query(this::visit).list();
    }

    /** In the order in which they were told. */
    List<MoveRow> moves(String band) {
        return jdbc.sql("SELECT * FROM band_move WHERE band_id = ? ORDER BY recorded_at, event_id, line")
                .param(band)
                .query((row, number) -> new MoveRow(
                        row.getString("fact_id"),
                        row.getString("kind"),
                        row.getString("material_id"),
                        row.getLong("quantity"),
                        row.getString("source"),
                        row.getString("target"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private VisitRow visit(ResultSet row, int number) throws SQLException {
        String guard = row.getString("guard");
        String bycatch = row.getString("bycatch");
        return new VisitRow(
                row.getString("visit_id"),
                row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                row.getString("person_id"),
                row.getString("crew_id"),
                row.getString("told_by"),
                Answer.valueOf(row.getString("answer")).spelt(),
                row.getObject("saturation_percent", Integer.class),
                json.readTree(row.getString("catches")),
                row.getLong("catch_total"),
                row.getBoolean("lower_bound"),
                guard == null ? null : GuardState.valueOf(guard).spelt(),
                bycatch == null ? null : json.readTree(bycatch),
                Arrays.asList((String[]) row.getArray("replaced").getArray()),
                Arrays.asList((String[]) row.getArray("flags").getArray()));
    }
}
