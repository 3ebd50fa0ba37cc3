package org.bandtrail.inspections.bands;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.inspections.bands.BandEvent.BycatchClosed;
import org.bandtrail.inspections.bands.BandEvent.FittingHeard;
import org.bandtrail.inspections.bands.BandEvent.PiecesReplaced;
import org.bandtrail.inspections.bands.BandEvent.PlacesSettled;
import org.bandtrail.inspections.bands.BandEvent.TakenDown;
import org.bandtrail.inspections.bands.BandEvent.Visited;
import org.bandtrail.inspections.columns.Columns;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.inspections.pieces.Trunk;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes where bands hang and what moved. */
final class BandTables {
    private final JdbcClient jdbc;

    BandTables(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The latest that a page tells of one band. */
    private record Latest(
            String band,
            @Nullable Trunk trunk,
            @Nullable Instant fitted,
            @Nullable Instant down) {
        Latest with(BandEvent event) {
            Instant at = event.occurred().happened();
            return switch (event) {
                case FittingHeard heard
                when fitted == null || !at.isBefore(fitted) -> new Latest(band, heard.trunk(), at, down);
                case TakenDown _ when down == null || !at.isBefore(down) -> new Latest(band, trunk, fitted, at);
                default -> this;
            };
        }
    }

    private record MoveRow(UUID event, long line, BandEvent of, Move move) {}

    void add(List<StoredEvent> page) {
        Map<String, Latest> latest = new TreeMap<>();
        List<MoveRow> moves = new ArrayList<>();
        for (StoredEvent stored : page) {
            BandEvent event = (BandEvent) stored.payload();
            latest.merge(
                    event.band().value(),
                    new Latest(event.band().value(), null, null, null).with(event),
                    (known, unused) -> known.with(event));
            List<Move> itsMoves = moves(event);
            for (int line = 0; line < itsMoves.size(); line++) {
                moves.add(new MoveRow(stored.eventId(), line, event, itsMoves.get(line)));
            }
        }
        addBands(List.copyOf(latest.values()));
        if (!moves.isEmpty()) {
            addMoves(moves);
        }
    }

    /** Fittings are told as moves elsewhere; here they are shown with the rest. */
    private static List<Move> moves(BandEvent event) {
        if (event instanceof FittingHeard heard) {
            String crew = Places.crew(heard.doer().person());
            String tree = Places.tree(heard.trunk().tree());
            return heard.putUp().stream()
                    .map(portion -> new Move(portion, crew, tree))
                    .toList();
        }
        return event.moves();
    }

    private void addBands(List<Latest> rows) {
        jdbc.sql("""
                        INSERT INTO watched_band AS w (band_id, tree_id, site_id, fitted_at, down_at)
                        SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::timestamptz[],
                            ?::timestamptz[])
                        ON CONFLICT (band_id) DO UPDATE SET
                            tree_id = CASE WHEN EXCLUDED.fitted_at >= coalesce(w.fitted_at, '-infinity')
                                           THEN EXCLUDED.tree_id ELSE w.tree_id END,
                            site_id = CASE WHEN EXCLUDED.fitted_at >= coalesce(w.fitted_at, '-infinity')
                                           THEN EXCLUDED.site_id ELSE w.site_id END,
                            fitted_at = greatest(EXCLUDED.fitted_at, w.fitted_at),
                            down_at = greatest(EXCLUDED.down_at, w.down_at)""")
                .params(
                        Columns.texts(rows, Latest::band),
                        Columns.texts(
                                rows,
                                row -> row.trunk() == null ? null : row.trunk().tree()),
                        Columns.texts(
                                rows,
                                row -> row.trunk() == null ? null : row.trunk().site()),
                        Columns.texts(rows, Latest::fitted),
                        Columns.texts(rows, Latest::down))
                .update();
    }

    private void addMoves(List<MoveRow> rows) {
        jdbc.sql("""
                        INSERT INTO band_move (event_id, line, band_id, fact_id, kind, material_id, quantity, source,
                            target, happened_at, recorded_at)
                        SELECT * FROM unnest(?::uuid[], ?::bigint[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::varchar[], ?::bigint[], ?::varchar[], ?::varchar[], ?::timestamptz[], ?::timestamptz[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        Columns.texts(rows, MoveRow::event),
                        Columns.numbers(rows, MoveRow::line),
                        Columns.texts(rows, row -> row.of().band()),
                        Columns.texts(rows, row -> fact(row.of())),
                        Columns.texts(rows, row -> row.move().portion().kind()),
                        Columns.texts(rows, row -> row.move().portion().id()),
                        Columns.numbers(rows, row -> row.move().portion().quantity()),
                        Columns.texts(rows, row -> row.move().source()),
                        Columns.texts(rows, row -> row.move().target()),
                        Columns.texts(rows, row -> row.of().occurred().happened()),
                        Columns.texts(rows, row -> row.of().occurred().recorded()))
                .update();
    }

    private static String fact(BandEvent event) {
        return switch (event) {
            case FittingHeard e -> e.fitting();
            case Visited e -> e.visit();
            case PiecesReplaced e -> e.visit();
            case TakenDown e -> e.teardown();
            case PlacesSettled e -> e.fact();
            case BycatchClosed e -> e.visit();
        };
    }
}
