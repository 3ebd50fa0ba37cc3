package org.bandtrail.siteinstalls.meshpieces;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.FittedAgain;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.Graded;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.PutElsewhere;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.TakenBack;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every piece of mesh as it stands and its history, a page at a time. */
@Component
final class MeshPieceProjection implements Projection {
    private final JdbcClient jdbc;

    MeshPieceProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "mesh-piece";
    }

    @Override
    public List<String> tables() {
        return List.of("mesh_piece", "mesh_piece_step");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(MeshPieceEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        Map<MeshPieceId, MeshPiece> pieces = read(page.stream()
                .map(stored -> ((MeshPieceEvent) stored.payload()).pieceId())
                .distinct()
                .toList());
        for (StoredEvent stored : page) {
            MeshPieceEvent event = (MeshPieceEvent) stored.payload();
            pieces.merge(event.pieceId(), MeshPiece.NONE.evolve(event), (known, first) -> known.evolve(event));
        }
        write(List.copyOf(pieces.values()));
        steps(page);
    }

    private Map<MeshPieceId, MeshPiece> read(List<MeshPieceId> ids) {
        Map<MeshPieceId, MeshPiece> pieces = new HashMap<>();
        jdbc.sql("SELECT * FROM mesh_piece WHERE piece_id = ANY (?)")
                .param(ids.stream().map(MeshPieceId::value).toArray(String[]::new))
                .query((row, number) -> piece(row))
                .list()
                .forEach(piece -> pieces.put(idOf(piece), piece));
        return pieces;
    }

    private static MeshPiece piece(ResultSet row) throws SQLException {
        String wear = row.getString("wear");
        String band = row.getString("band_id");
        return new MeshPiece(
                new MeshPieceId(row.getString("piece_id")),
                new ReelId(row.getString("reel_id")),
                new MeshPiece.Size(Length.ofMm(row.getLong("length_mm")), moment(row, "length_since")),
                wear == null ? null : new MeshPiece.Worn(Wear.valueOf(wear), moment(row, "wear_since")),
                new MeshPiece.Where(
                        band == null ? null : new BandId(band), row.getString("place"), moment(row, "since")));
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private void write(List<MeshPiece> pieces) {
        jdbc.sql("""
                        INSERT INTO mesh_piece (piece_id, reel_id, length_mm, length_since, wear, wear_since, band_id,
                                                place, since)
                        SELECT * FROM unnest(?::text[], ?::text[], ?::bigint[], ?::timestamptz[], ?::text[],
                                             ?::timestamptz[], ?::text[], ?::text[], ?::timestamptz[])
                        ON CONFLICT (piece_id) DO UPDATE SET reel_id = excluded.reel_id,
                            length_mm = excluded.length_mm, length_since = excluded.length_since,
                            wear = excluded.wear, wear_since = excluded.wear_since, band_id = excluded.band_id,
                            place = excluded.place, since = excluded.since""")
                .params(
                        texts(pieces, piece -> idOf(piece).value()),
                        texts(
                                pieces,
                                piece -> piece.reelId() == null
                                        ? null
                                        : piece.reelId().value()),
                        pieces.stream()
                                .map(piece -> piece.size() == null
                                        ? null
                                        : piece.size().length().mm())
                                .toArray(Long[]::new),
                        texts(
                                pieces,
                                piece -> piece.size() == null
                                        ? null
                                        : at(piece.size().since())),
                        texts(
                                pieces,
                                piece -> piece.worn() == null
                                        ? null
                                        : piece.worn().wear().name()),
                        texts(
                                pieces,
                                piece -> piece.worn() == null
                                        ? null
                                        : at(piece.worn().since())),
                        texts(pieces, MeshPieceProjection::band),
                        texts(
                                pieces,
                                piece -> piece.where() == null
                                        ? null
                                        : piece.where().place()),
                        texts(
                                pieces,
                                piece -> piece.where() == null
                                        ? null
                                        : at(piece.where().since())))
                .update();
    }

    private static MeshPieceId idOf(MeshPiece piece) {
        if (piece.pieceId() == null) {
            throw new IllegalStateException("A row of a piece nobody told of.");
        }
        return piece.pieceId();
    }

    private static @Nullable String band(MeshPiece piece) {
        return piece.where() == null || piece.where().bandId() == null
                ? null
                : piece.where().bandId().value();
    }

    private void steps(List<StoredEvent> page) {
        List<MeshPieceEvent> events =
                page.stream().map(stored -> (MeshPieceEvent) stored.payload()).toList();
        jdbc.sql("""
                        INSERT INTO mesh_piece_step (position, piece_id, what, happened_at, recorded_at, by_person,
                                                     band_id, note)
                        SELECT * FROM unnest(?::bigint[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[],
                                             ?::text[], ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        page.stream().map(StoredEvent::position).toArray(Long[]::new),
                        texts(events, event -> event.pieceId().value()),
                        texts(events, MeshPieceProjection::what),
                        texts(events, event -> at(event.when().happened())),
                        texts(events, event -> at(event.when().recorded())),
                        texts(events, event -> event.by().value()),
                        texts(events, MeshPieceProjection::bandOf),
                        texts(events, MeshPieceProjection::note))
                .update();
    }

    private static String what(MeshPieceEvent event) {
        return switch (event) {
            case TakenBack back -> back.bandId() == null ? "written down" : "taken back";
            case Graded _ -> "looked at";
            case PutElsewhere _ -> "put";
            case FittedAgain _ -> "fitted again";
        };
    }

    private static @Nullable String bandOf(MeshPieceEvent event) {
        BandId band = switch (event) {
            case TakenBack back -> back.bandId();
            case FittedAgain fitted -> fitted.bandId();
            case Graded _, PutElsewhere _ -> null;
        };
        return band == null ? null : band.value();
    }

    private static String note(MeshPieceEvent event) {
        return switch (event) {
            case TakenBack back -> "%s of reel %s".formatted(back.length(), back.reelId());
            case Graded graded ->
                graded.wear().word()
                        + (graded.length() == null ? "" : ", " + graded.length())
                        + (graded.note().isBlank() ? "" : ": " + graded.note());
            case PutElsewhere put -> put.place();
            case FittedAgain fitted -> "%s on tree %s".formatted(fitted.length(), fitted.treeId());
        };
    }

    private static String at(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC).toString();
    }

    private static <T> @Nullable String[] texts(List<T> rows, Function<T, @Nullable String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }
}
