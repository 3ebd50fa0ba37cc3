package org.bandtrail.siteinstalls.meshpieces;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.kernel.BandId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All pieces of mesh that were used again or wait for it. */
@Repository
public class MeshPieces {
    private static final String ROWS = """
            SELECT p.*, r.width_mm, r.opening_mm,
                   (SELECT count(*) FROM mesh_piece_step s
                    WHERE s.piece_id = p.piece_id AND s.what = 'fitted again') AS times_fitted
            FROM mesh_piece p LEFT JOIN known_reel r ON r.reel_id = p.reel_id
            WHERE TRUE""";
    private final JdbcClient jdbc;

    MeshPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * What a list is narrowed to.
     *
     * @param state free or hanging, null for both
     * @param wear good, worn, scrap or unseen, null for all
     * @param place who or what has it, null for all
     * @param text part of piece, reel or band, null for all
     */
    public record Asked(
            @Nullable String state,
            @Nullable String wear,
            @Nullable String place,
            @Nullable String text) {}

    /** One page by identity. */
    public List<MeshPieceView> page(Asked asked, @Nullable String after, int limit) {
        Map<String, Object> values = new LinkedHashMap<>();
        StringBuilder sql = new StringBuilder(ROWS);
        if (asked.state() != null) {
            sql.append(asked.state().equals("hanging") ? " AND p.band_id IS NOT NULL" : " AND p.band_id IS NULL");
        }
        if ("unseen".equals(asked.wear())) {
            sql.append(" AND p.wear IS NULL");
        } else if (asked.wear() != null) {
            sql.append(" AND p.wear = :wear");
            values.put("wear", Wear.of(asked.wear()).name());
        }
        if (asked.place() != null) {
            sql.append(" AND p.place = :place");
            values.put("place", asked.place());
        }
        if (asked.text() != null) {
            sql.append(" AND (p.piece_id ILIKE :like OR p.reel_id ILIKE :like OR p.band_id ILIKE :like)");
            values.put("like", "%" + asked.text().replaceAll("([\\\\%_])", "\\\\$1") + "%");
        }
        if (after != null) {
            sql.append(" AND p.piece_id > :after");
            values.put("after", after);
        }
        values.put("limit", limit);
        return jdbc.sql(sql.append(" ORDER BY p.piece_id LIMIT :limit").toString())
                .params(values)
                .query(MeshPieces::row)
                .list();
    }

    /** One piece, empty if nobody told of it. */
    public Optional<MeshPieceView> named(MeshPieceId pieceId) {
        return jdbc.sql(ROWS + " AND p.piece_id = ?")
                .param(pieceId.value())
                .query(MeshPieces::row)
                .optional();
    }

    /** One piece with everything that happened to it, empty if nobody told of it. */
    public Optional<MeshPieceView.Whole> whole(MeshPieceId pieceId) {
        return named(pieceId).map(piece -> new MeshPieceView.Whole(piece, steps(pieceId)));
    }

    /** The piece that guards this band now, empty if its guard is new mesh or none. */
    public Optional<MeshPieceView> on(BandId bandId) {
        return jdbc.sql(ROWS + " AND p.band_id = ? ORDER BY p.since DESC LIMIT 1")
                .param(bandId.value())
                .query(MeshPieces::row)
                .optional();
    }

    private List<MeshPieceView.Step> steps(MeshPieceId pieceId) {
        return jdbc.sql("SELECT * FROM mesh_piece_step WHERE piece_id = ? ORDER BY happened_at DESC, position DESC")
                .param(pieceId.value())
                .query((row, number) -> new MeshPieceView.Step(
                        row.getString("what"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                        row.getString("by_person"),
                        row.getString("band_id"),
                        row.getString("note")))
                .list();
    }

    private static MeshPieceView row(ResultSet row, int number) throws SQLException {
        String wear = row.getString("wear");
        return new MeshPieceView(
                row.getString("piece_id"),
                row.getString("reel_id"),
                row.getLong("length_mm"),
                row.getObject("width_mm", Long.class),
                row.getObject("opening_mm", Long.class),
                wear == null ? null : Wear.valueOf(wear).word(),
                row.getString("band_id"),
                row.getString("place"),
                row.getObject("since", OffsetDateTime.class).toInstant(),
                row.getLong("times_fitted"));
    }
}
