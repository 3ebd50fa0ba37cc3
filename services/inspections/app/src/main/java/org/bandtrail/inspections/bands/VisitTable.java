package org.bandtrail.inspections.bands;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bandtrail.inspections.bands.BandEvent.BycatchClosed;
import org.bandtrail.inspections.bands.BandEvent.PiecesReplaced;
import org.bandtrail.inspections.bands.BandEvent.Visited;
import org.bandtrail.inspections.columns.Columns;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.sightings.Bycatch;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.ObjectMapper;

/** Writes visits, what was renewed on them, and what became of animals. */
final class VisitTable {
    private final JdbcClient jdbc;
    private final ObjectMapper json;

    VisitTable(JdbcClient jdbc, ObjectMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    void add(List<Visited> rows) {
        if (rows.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO band_visit (band_id, visit_id, crew_id, person_id, told_by, answer,
                            saturation_percent, lower_bound, catches, catch_total, guard, bycatch, bycatch_seen,
                            bycatch_open, flags, happened_at, recorded_at)
                        SELECT band_id, visit_id, crew_id, person_id, told_by, answer, saturation_percent, lower_bound,
                            catches, catch_total, guard, bycatch, bycatch_seen, bycatch_open,
                            string_to_array(flags, ','), happened_at, recorded_at
                        FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::integer[], ?::boolean[], ?::jsonb[], ?::bigint[], ?::varchar[], ?::jsonb[], ?::boolean[],
                            ?::boolean[], ?::varchar[], ?::timestamptz[], ?::timestamptz[])
                            AS v (band_id, visit_id, crew_id, person_id, told_by, answer, saturation_percent,
                                lower_bound, catches, catch_total, guard, bycatch, bycatch_seen, bycatch_open, flags,
                                happened_at, recorded_at)
                        ON CONFLICT DO NOTHING""")
                .params(
                        Columns.texts(rows, Visited::band),
                        Columns.texts(rows, Visited::visit),
                        Columns.texts(rows, visit -> visit.doer().crew()),
                        Columns.texts(rows, visit -> visit.doer().person()),
                        Columns.texts(rows, visit -> visit.doer().by()),
                        Columns.texts(rows, visit -> visit.look().answer().name()),
                        Columns.texts(rows, visit -> visit.look().saturationPercent()),
                        Columns.flags(rows, Visited::lowerBound),
                        Columns.texts(rows, this::catches),
                        Columns.numbers(rows, visit -> visit.look().catchTotal()),
                        Columns.texts(rows, visit -> visit.look().guard()),
                        Columns.texts(rows, this::bycatch),
                        Columns.flags(rows, visit -> seen(visit) != null),
                        Columns.flags(rows, VisitTable::open),
                        Columns.texts(rows, VisitTable::flags),
                        Columns.texts(rows, visit -> visit.occurred().happened()),
                        Columns.texts(rows, visit -> visit.occurred().recorded()))
                .update();
    }

    void renew(List<PiecesReplaced> facts) {
        record Row(PiecesReplaced fact, Portion portion) {}
        List<Row> rows = facts.stream()
                .flatMap(fact -> fact.replacement().putUp().stream().map(portion -> new Row(fact, portion)))
                .toList();
        if (rows.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO band_renewal (band_id, fact_id, kind, happened_at)
                        SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::timestamptz[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        Columns.texts(rows, row -> row.fact().band()),
                        Columns.texts(rows, row -> row.fact().visit()),
                        Columns.texts(rows, row -> row.portion().kind()),
                        Columns.texts(rows, row -> row.fact().occurred().happened()))
                .update();
    }

    /** Of two outcomes told for one animal the later told stays; the page is walked so that each row comes once. */
    void close(List<BycatchClosed> facts) {
        TreeMap<String, BycatchClosed> latest = new TreeMap<>();
        facts.forEach(fact -> latest.put(fact.band() + "/" + fact.visit(), fact));
        List<BycatchClosed> rows = List.copyOf(latest.values());
        if (rows.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO bycatch_outcome AS o (band_id, visit_id, outcome, handed_to, handed_at, told_by,
                            recorded_at)
                        SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::timestamptz[],
                            ?::varchar[], ?::timestamptz[])
                        ON CONFLICT (band_id, visit_id) DO UPDATE SET
                            outcome = EXCLUDED.outcome, handed_to = EXCLUDED.handed_to, handed_at = EXCLUDED.handed_at,
                            told_by = EXCLUDED.told_by, recorded_at = EXCLUDED.recorded_at
                        WHERE EXCLUDED.recorded_at >= o.recorded_at""")
                .params(
                        Columns.texts(rows, BycatchClosed::band),
                        Columns.texts(rows, BycatchClosed::visit),
                        Columns.texts(rows, BycatchClosed::outcome),
                        Columns.texts(rows, BycatchClosed::handedTo),
                        Columns.texts(rows, BycatchClosed::handedAt),
                        Columns.texts(rows, fact -> fact.doer().by()),
                        Columns.texts(rows, fact -> fact.occurred().recorded()))
                .update();
    }

    private String catches(Visited visit) {
        TreeMap<String, Long> byStage = new TreeMap<>();
        visit.look().catches().forEach((stage, count) -> byStage.put(stage.spelt(), count));
        return json.writeValueAsString(byStage);
    }

    private @Nullable String bycatch(Visited visit) {
        Bycatch bycatch = visit.look().bycatch();
        return bycatch == null ? null : json.writeValueAsString(bycatch);
    }

    private static @Nullable Bycatch seen(Visited visit) {
        Bycatch bycatch = visit.look().bycatch();
        return bycatch != null && bycatch.seen() ? bycatch : null;
    }

    private static boolean open(Visited visit) {
        Bycatch seen = seen(visit);
        return seen != null && seen.open();
    }

    private static String flags(Visited visit) {
        return visit.flags().stream().map(BandFlag::spelt).sorted().collect(Collectors.joining(","));
    }
}
