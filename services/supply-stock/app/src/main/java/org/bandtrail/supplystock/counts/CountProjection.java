package org.bandtrail.supplystock.counts;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps counts and their lines; a sheet is written as one set. */
@Component
final class CountProjection implements Projection {
    private final JdbcClient jdbc;

    CountProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "count";
    }

    @Override
    public List<String> tables() {
        return List.of("stock_count", "stock_count_line");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CountEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CountEvent) stored.payload()) {
                case CountEvent.Opened opened -> open(opened);
                case CountEvent.LineCounted counted -> count(counted);
                case CountEvent.RoundFinished finished -> finish(finished);
                case CountEvent.DifferenceExplained explained ->
                    jdbc.sql("""
                                    UPDATE stock_count_line SET reason = ?
                                    WHERE count_id = ? AND holding = ? AND id = ? AND place = ?""")
                            .params(
                                    explained.reason(),
                                    explained.countId().value(),
                                    explained.line().holding(),
                                    explained.line().id(),
                                    explained.line().place().toString())
                            .update();
                case CountEvent.Approved approved ->
                    close(
                            approved.countId(),
                            "APPROVED",
                            null,
                            approved.by().value(),
                            approved.occurred().recorded());
                case CountEvent.Cancelled cancelled ->
                    close(
                            cancelled.countId(),
                            "CANCELLED",
                            cancelled.reason(),
                            cancelled.by().value(),
                            cancelled.occurred().recorded());
            }
        }
    }

    private void open(CountEvent.Opened opened) {
        jdbc.sql("""
                        INSERT INTO stock_count (count_id, place, stage, round, second_person_from_minor, opened_by, opened_at)
                        VALUES (?, ?, 'COUNTING', 1, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        opened.countId().value(),
                        opened.scope().toString(),
                        opened.rules().secondPersonFromMinor(),
                        opened.by().value(),
                        opened.occurred().happened().atOffset(ZoneOffset.UTC))
                .update();
        insert(opened.countId(), opened.sheet(), true);
    }

    private void insert(CountId count, List<SheetLine> sheet, boolean onSheet) {
        jdbc.sql("""
                        INSERT INTO stock_count_line (count_id, on_sheet, holding, id, place, material, kind, book, bought,
                            cost_minor, currency, elsewhere)
                        SELECT ?, ?, * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::bigint[], ?::bigint[], ?::bigint[], ?::varchar[], ?::varchar[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        count.value(),
                        onSheet,
                        texts(sheet, SheetLine::holding),
                        texts(sheet, SheetLine::id),
                        texts(sheet, line -> line.place().toString()),
                        texts(sheet, SheetLine::material),
                        texts(sheet, SheetLine::kind),
                        numbers(sheet, SheetLine::book),
                        numbers(sheet, SheetLine::bought),
                        numbers(sheet, SheetLine::costMinor),
                        texts(sheet, SheetLine::currency),
                        texts(
                                sheet,
                                line -> line.elsewhere() == null
                                        ? null
                                        : line.elsewhere().toString()))
                .update();
    }

    private void count(CountEvent.LineCounted counted) {
        if (!counted.onSheet()) {
            insert(counted.countId(), List.of(counted.line()), false);
        }
        figure(
                counted.countId(),
                counted.line().key(),
                counted.quantity(),
                counted.round(),
                counted.by().value());
    }

    private void figure(CountId count, SheetLine.Key line, long quantity, int round, String by) {
        jdbc.sql("""
                        UPDATE stock_count_line SET counted = :quantity, counted_in = :round,
                            counted_by = CASE WHEN counted_in = :round
                                THEN trim_array(counted_by, 1) || :by::varchar ELSE counted_by || :by::varchar END
                        WHERE count_id = :count AND holding = :holding AND id = :id AND place = :place""")
                .param("quantity", quantity)
                .param("round", round)
                .param("by", by)
                .param("count", count.value())
                .param("holding", line.holding())
                .param("id", line.id())
                .param("place", line.place().toString())
                .update();
    }

    private void finish(CountEvent.RoundFinished finished) {
        String count = finished.countId().value();
        finished.notThere()
                .forEach(line -> figure(
                        finished.countId(),
                        line,
                        0,
                        finished.round(),
                        finished.by().value()));
        jdbc.sql("""
                        UPDATE stock_count_line l SET to_recount = EXISTS (
                            SELECT 1 FROM unnest(?::varchar[], ?::varchar[], ?::varchar[]) AS r (holding, id, place)
                            WHERE r.holding = l.holding AND r.id = l.id AND r.place = l.place)
                        WHERE l.count_id = ?""")
                .params(
                        texts(finished.again(), SheetLine.Key::holding),
                        texts(finished.again(), SheetLine.Key::id),
                        texts(finished.again(), line -> line.place().toString()),
                        count)
                .update();
        boolean done = finished.again().isEmpty();
        jdbc.sql("UPDATE stock_count SET stage = ?, round = ? WHERE count_id = ?")
                .params(done ? "REVIEW" : "COUNTING", done ? finished.round() : finished.round() + 1, count)
                .update();
    }

    private void close(CountId count, String stage, @Nullable String why, String by, Instant at) {
        jdbc.sql("""
                        UPDATE stock_count SET stage = ?, cancelled_because = ?, closed_by = ?, closed_at = ?
                        WHERE count_id = ?""")
                .param(stage)
                .param(why)
                .param(by)
                .param(at.atOffset(ZoneOffset.UTC))
                .param(count.value())
                .update();
    }

    private static <T> String[] texts(List<T> rows, Function<T, @Nullable String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static Long[] numbers(List<SheetLine> rows, Function<SheetLine, Long> column) {
        return rows.stream().map(column).toArray(Long[]::new);
    }
}
