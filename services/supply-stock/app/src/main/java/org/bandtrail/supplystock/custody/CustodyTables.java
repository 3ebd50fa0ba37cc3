package org.bandtrail.supplystock.custody;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes the tables of custody by sets. */
final class CustodyTables {
    private final JdbcClient jdbc;

    CustodyTables(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insertSteps(List<CustodyStep> steps) {
        jdbc.sql("""
            INSERT INTO custody_step (position, step, person_id, holding, id, source, target, quantity, place,
                what, kit_id, measured, happened_at, recorded_at)
            SELECT * FROM unnest(?::bigint[], ?::integer[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::varchar[], ?::varchar[], ?::bigint[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::boolean[], ?::timestamptz[], ?::timestamptz[])
            ON CONFLICT DO NOTHING\
            """)
                .params(
                        numbers(steps, CustodyStep::position),
                        numbers(steps, CustodyStep::step),
                        texts(steps, step -> step.held().person()),
                        texts(steps, step -> step.held().holding()),
                        texts(steps, step -> step.held().id()),
                        texts(steps, step -> step.source().word()),
                        texts(steps, step -> step.target().word()),
                        numbers(steps, CustodyStep::quantity),
                        texts(steps, CustodyStep::place),
                        texts(steps, CustodyStep::what),
                        texts(steps, CustodyStep::kitId),
                        steps.stream().map(CustodyStep::measured).toArray(Boolean[]::new),
                        texts(steps, step -> step.happened().toString()),
                        texts(steps, step -> step.recorded().toString()))
                .update();
    }

    /** The kits of which something was handed out that these steps touch. */
    List<String> kitsOf(List<CustodyStep> steps) {
        return jdbc.sql("""
            SELECT DISTINCT s.kit_id FROM custody_step s
            JOIN unnest(?::varchar[], ?::varchar[], ?::varchar[]) AS g (holding, id, person_id)
                 ON g.holding = s.holding AND g.id = s.id AND g.person_id = s.person_id
            WHERE s.kit_id IS NOT NULL ORDER BY s.kit_id\
            """)
                .params(
                        texts(steps, step -> step.held().holding()),
                        texts(steps, step -> step.held().id()),
                        texts(steps, step -> step.held().person()))
                .query(String.class)
                .list();
    }

    /** Every step of every reel and batch that one of these kits held, in the order of the books. */
    List<CustodyStep> stepsOf(List<String> kits) {
        return jdbc.sql("""
            SELECT s.* FROM custody_step s
            JOIN (SELECT DISTINCT holding, id, person_id FROM custody_step WHERE kit_id = ANY (?)) g
                 ON g.holding = s.holding AND g.id = s.id AND g.person_id = s.person_id
            ORDER BY s.position, s.step, s.person_id\
            """)
                .param(kits.toArray(String[]::new))
                .query(SettlementReads::step)
                .list();
    }

    void replace(List<String> kits, Settling settling) {
        String[] replaced = kits.toArray(String[]::new);
        jdbc.sql("DELETE FROM kit_line_settled WHERE kit_id = ANY (?)")
                .param(replaced)
                .update();
        jdbc.sql("DELETE FROM kit_settlement WHERE kit_id = ANY (?)")
                .param(replaced)
                .update();
        List<Row> rows = kits.stream()
                .flatMap(kit -> settling.lines(kit).entrySet().stream().map(line -> new Row(kit, line)))
                .toList();
        insertLines(rows);
        insertKits(kits.stream().map(kit -> Summary.of(kit, settling)).toList());
    }

    private record Row(String kit, Map.Entry<CustodyStep.Held, Settlement> line) {
        CustodyStep.Held held() {
            return line.getKey();
        }
    }

    private void insertLines(List<Row> rows) {
        jdbc.sql("""
            INSERT INTO kit_line_settled (kit_id, holding, id, person_id, handed_out, fitted, returned,
                scrapped, missing, settled, elsewhere, still_out)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[],
                ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[])\
            """)
                .params(
                        texts(rows, Row::kit),
                        texts(rows, row -> row.held().holding()),
                        texts(rows, row -> row.held().id()),
                        texts(rows, row -> row.held().person()),
                        numbers(rows, row -> row.line().getValue().handedOut()),
                        numbers(rows, row -> row.line().getValue().fitted()),
                        numbers(rows, row -> row.line().getValue().returned()),
                        numbers(rows, row -> row.line().getValue().scrapped()),
                        numbers(rows, row -> row.line().getValue().missing()),
                        numbers(rows, row -> row.line().getValue().settled()),
                        numbers(rows, row -> row.line().getValue().elsewhere()),
                        numbers(rows, row -> row.line().getValue().stillOut()))
                .update();
    }

    private void insertKits(List<Summary> summaries) {
        jdbc.sql("""
            INSERT INTO kit_settlement (kit_id, lines_out, settled_at, reopened, reopened_at)
            SELECT * FROM unnest(?::varchar[], ?::integer[], ?::timestamptz[], ?::integer[],
                ?::timestamptz[])\
            """)
                .params(
                        texts(summaries, Summary::kit),
                        numbers(summaries, Summary::linesOut),
                        texts(summaries, Summary::settledAt),
                        numbers(summaries, Summary::reopened),
                        texts(summaries, Summary::reopenedAt))
                .update();
    }

    void insertCrews(List<CrewMembers> crews) {
        for (CrewMembers crew : crews) {
            jdbc.sql("""
                INSERT INTO custody_crew (crew_id, position, people, happened_at, recorded_at)
                VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING\
                """)
                    .param(crew.crew())
                    .param(crew.position())
                    .param(crew.people().toArray(String[]::new))
                    .param(crew.happened().atOffset(ZoneOffset.UTC))
                    .param(crew.recorded().atOffset(ZoneOffset.UTC))
                    .update();
        }
    }

    private static <T> String[] texts(List<T> rows, Function<T, String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> Long[] numbers(List<T> rows, ToLongFunction<T> column) {
        return rows.stream().map(column::applyAsLong).toArray(Long[]::new);
    }
}
