package org.bandtrail.siteinstalls.bands;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bandtrail.kernel.BandId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads and writes whole rows of the table of bands, by sets. */
final class BandTable {
    private static final String UPSERT = """
            INSERT INTO band (band_id, tree_id, site_id, crew_id, person_id, state, fitted_at, taken_down_at,
                tape_reel, tape_mm, tape_since, mesh_reel, mesh_mm, mesh_since, fastener_batch, pieces, pieces_since,
                girth_mm, height_mm, must_remove_by, policy_version, device, trunk_position, deviation, photos,
                seam_mm, guard_closed_below, programme, pest, also_used)
            SELECT * FROM unnest(?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::timestamptz[],
                ?::timestamptz[], ?::text[], ?::bigint[], ?::timestamptz[], ?::text[], ?::bigint[], ?::timestamptz[],
                ?::text[], ?::bigint[], ?::timestamptz[], ?::bigint[], ?::bigint[], ?::date[], ?::integer[],
                ?::text[], ?::integer[], ?::text[], ?::text[], ?::bigint[], ?::boolean[], ?::text[], ?::text[],
                ?::text[])
            ON CONFLICT (band_id) DO UPDATE SET tree_id = excluded.tree_id, site_id = excluded.site_id,
                crew_id = excluded.crew_id, person_id = excluded.person_id, state = excluded.state,
                fitted_at = excluded.fitted_at, taken_down_at = excluded.taken_down_at,
                tape_reel = excluded.tape_reel, tape_mm = excluded.tape_mm, tape_since = excluded.tape_since,
                mesh_reel = excluded.mesh_reel, mesh_mm = excluded.mesh_mm, mesh_since = excluded.mesh_since,
                fastener_batch = excluded.fastener_batch, pieces = excluded.pieces,
                pieces_since = excluded.pieces_since, girth_mm = excluded.girth_mm, height_mm = excluded.height_mm,
                must_remove_by = excluded.must_remove_by, policy_version = excluded.policy_version,
                device = excluded.device, trunk_position = excluded.trunk_position, deviation = excluded.deviation,
                photos = excluded.photos, seam_mm = excluded.seam_mm,
                guard_closed_below = excluded.guard_closed_below, programme = excluded.programme,
                pest = excluded.pest, also_used = excluded.also_used""";

    private final JdbcClient jdbc;

    BandTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The rows of these bands that exist. */
    Map<BandId, BandRow> read(Collection<BandId> bands) {
        Map<BandId, BandRow> rows = new HashMap<>();
        jdbc.sql("SELECT * FROM band WHERE band_id = ANY (?)")
                .param(bands.stream().map(BandId::value).toArray(String[]::new))
                .query((row, number) -> BandRowReader.row(row))
                .list()
                .forEach(row -> rows.put(row.bandId(), row));
        return rows;
    }

    /** Writes these rows over what was there. */
    void write(Collection<BandRow> bands) {
        List<BandRow> rows = List.copyOf(bands);
        List<Object> columns = new ArrayList<>(standing(rows));
        columns.addAll(material(rows));
        columns.addAll(told(rows));
        columns.addAll(FitDetailsColumns.of(rows));
        jdbc.sql(UPSERT).params(columns).update();
    }

    private static List<Object> standing(List<BandRow> rows) {
        return List.of(
                texts(rows, row -> row.bandId().value()),
                texts(rows, row -> row.treeId() == null ? null : row.treeId().value()),
                texts(rows, row -> row.siteId() == null ? null : row.siteId().value()),
                texts(rows, row -> row.fit() == null ? null : row.fit().crewId()),
                texts(rows, row -> row.fit() == null ? null : row.fit().personId()),
                texts(rows, row -> row.band().up() ? "up" : "down"),
                texts(rows, row -> moment(row.band().fitted())),
                texts(rows, row -> moment(row.band().takenDown())));
    }

    private static List<Object> material(List<BandRow> rows) {
        return List.of(
                texts(rows, row -> reel(row.band().tape())),
                numbers(rows, row -> mm(row.band().tape())),
                texts(rows, row -> since(row.band().tape())),
                texts(rows, row -> reel(row.band().mesh())),
                numbers(rows, row -> mm(row.band().mesh())),
                texts(rows, row -> since(row.band().mesh())),
                texts(rows, row -> batch(row.pins())),
                numbers(rows, row -> pieces(row.pins())),
                texts(rows, row -> row.pins() == null ? null : moment(row.pins().since())));
    }

    private static List<Object> told(List<BandRow> rows) {
        return List.of(
                numbers(
                        rows,
                        row -> row.fit() == null ? null : row.fit().girth().mm()),
                numbers(
                        rows,
                        row -> row.fit() == null ? null : row.fit().height().mm()),
                texts(
                        rows,
                        row -> row.fit() == null
                                ? null
                                : row.fit().mustRemoveBy().toString()),
                numbers(rows, row -> row.fit() == null ? null : (long) row.fit().policyVersion()));
    }

    private static @Nullable String moment(@Nullable Instant instant) {
        return instant == null ? null : instant.atOffset(ZoneOffset.UTC).toString();
    }

    private static @Nullable String reel(Band.@Nullable Hung hung) {
        return hung == null || hung.piece() == null
                ? null
                : hung.piece().reelId().value();
    }

    private static @Nullable Long mm(Band.@Nullable Hung hung) {
        return hung == null || hung.piece() == null
                ? null
                : hung.piece().length().mm();
    }

    private static @Nullable String since(Band.@Nullable Hung hung) {
        return hung == null ? null : moment(hung.since());
    }

    private static @Nullable String batch(BandRow.@Nullable Pins pins) {
        return pins == null || pins.fasteners() == null
                ? null
                : pins.fasteners().batchId().value();
    }

    private static @Nullable Long pieces(BandRow.@Nullable Pins pins) {
        return pins == null || pins.fasteners() == null
                ? null
                : pins.fasteners().pieces().count();
    }

    private static @Nullable String[] texts(List<BandRow> rows, Function<BandRow, @Nullable String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }

    private static @Nullable Long[] numbers(List<BandRow> rows, Function<BandRow, @Nullable Long> value) {
        return rows.stream().map(value).toArray(Long[]::new);
    }
}
