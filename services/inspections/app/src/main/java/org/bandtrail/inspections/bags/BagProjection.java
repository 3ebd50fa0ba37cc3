package org.bandtrail.inspections.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.inspections.bags.BagEvent.ContentsFollowed;
import org.bandtrail.inspections.bags.BagEvent.ContentsNoted;
import org.bandtrail.inspections.bags.BagEvent.TakenAway;
import org.bandtrail.inspections.columns.Columns;
import org.bandtrail.inspections.pieces.Move;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps what went into every bag and with which load it left. A page applied twice changes nothing. */
@Component
final class BagProjection implements Projection {
    private final JdbcClient jdbc;

    BagProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record MoveRow(UUID event, long line, BagEvent of, Move move) {}

    @Override
    public String name() {
        return "bags";
    }

    @Override
    public List<String> tables() {
        return List.of("bag_move", "bag_departure");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BagEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        List<MoveRow> moves = new ArrayList<>();
        List<TakenAway> departures = new ArrayList<>();
        for (StoredEvent stored : page) {
            BagEvent event = (BagEvent) stored.payload();
            for (int line = 0; line < event.moves().size(); line++) {
                moves.add(
                        new MoveRow(stored.eventId(), line, event, event.moves().get(line)));
            }
            if (event instanceof TakenAway gone) {
                departures.add(gone);
            }
        }
        addMoves(moves);
        addDepartures(departures);
    }

    private void addMoves(List<MoveRow> rows) {
        if (rows.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO bag_move (event_id, line, bag_id, load_id, kind, material_id, quantity, source, target,
                            recorded_at)
                        SELECT * FROM unnest(?::uuid[], ?::bigint[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::varchar[], ?::bigint[], ?::varchar[], ?::varchar[], ?::timestamptz[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        Columns.texts(rows, MoveRow::event),
                        Columns.numbers(rows, MoveRow::line),
                        Columns.texts(rows, row -> row.of().bag()),
                        Columns.texts(rows, row -> load(row.of())),
                        Columns.texts(rows, row -> row.move().portion().kind()),
                        Columns.texts(rows, row -> row.move().portion().id()),
                        Columns.numbers(rows, row -> row.move().portion().quantity()),
                        Columns.texts(rows, row -> row.move().source()),
                        Columns.texts(rows, row -> row.move().target()),
                        Columns.texts(rows, row -> row.of().occurred().recorded()))
                .update();
    }

    private static @Nullable Object load(BagEvent event) {
        return switch (event) {
            case ContentsNoted _ -> null;
            case TakenAway gone -> gone.load();
            case ContentsFollowed late -> late.load();
        };
    }

    private void addDepartures(List<TakenAway> rows) {
        if (rows.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO bag_departure (load_id, bag_id, carrier, flags, told_by, happened_at, recorded_at)
                        SELECT load_id, bag_id, carrier, string_to_array(flags, ','), told_by, happened_at, recorded_at
                        FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::timestamptz[], ?::timestamptz[])
                            AS d (load_id, bag_id, carrier, flags, told_by, happened_at, recorded_at)
                        ON CONFLICT DO NOTHING""")
                .params(
                        Columns.texts(rows, TakenAway::load),
                        Columns.texts(rows, TakenAway::bag),
                        Columns.texts(rows, TakenAway::carrier),
                        Columns.texts(
                                rows,
                                row -> row.flags().stream().map(BagFlag::spelt).collect(Collectors.joining(","))),
                        Columns.texts(rows, row -> row.doer().by()),
                        Columns.texts(rows, row -> row.occurred().happened()),
                        Columns.texts(rows, row -> row.occurred().recorded()))
                .update();
    }
}
