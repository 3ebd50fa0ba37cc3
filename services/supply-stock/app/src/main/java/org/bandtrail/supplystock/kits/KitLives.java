package org.bandtrail.supplystock.kits;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The kits, newest first, each with its state. */
@Repository
class KitLives {
    private static final String SELECT = """
        SELECT * FROM (SELECT k.*, s.settled_at, coalesce(s.reopened, 0) AS reopened, s.reopened_at,
               CASE WHEN k.released_at IS NOT NULL THEN 'released'
                    WHEN k.handed_out_at IS NULL AND k.until <= :now THEN 'lapsed'
                    WHEN k.handed_out_at IS NULL THEN 'reserved'
                    WHEN s.settled_at IS NOT NULL THEN 'settled'
                    ELSE 'out' END AS state
          FROM kit_life k LEFT JOIN kit_settlement s ON s.kit_id = k.kit_id) k
        """;
    private final JdbcClient jdbc;
    private final java.time.Clock clock;

    KitLives(JdbcClient jdbc, java.time.Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * One page, newest first.
     *
     * @param state only kits in this state, or null
     * @param person only kits of this person, or null
     * @param before kit before which the page begins, or null for the newest
     */
    List<KitLife> page(@Nullable String state, @Nullable String person, @Nullable String before, int limit) {
        return jdbc.sql(SELECT + """
             WHERE (:state::varchar IS NULL OR k.state = :state)
               AND (:person::varchar IS NULL OR k.person_id = :person)
               AND (:before::varchar IS NULL OR (k.began_at, k.kit_id) <
                   (SELECT o.began_at, o.kit_id FROM kit_life o WHERE o.kit_id = :before))
            ORDER BY k.began_at DESC, k.kit_id DESC LIMIT :limit\
            """)
                .param("now", clock.instant().atOffset(ZoneOffset.UTC))
                .param("state", state)
                .param("person", person)
                .param("before", before)
                .param("limit", limit)
                .query(KitLives::life)
                .list();
    }

    /** One kit, empty if the books have never heard of it. */
    Optional<KitLife> one(KitId kit) {
        return jdbc.sql(SELECT + " WHERE k.kit_id = :kit")
                .param("now", clock.instant().atOffset(ZoneOffset.UTC))
                .param("kit", kit.value())
                .query(KitLives::life)
                .optional();
    }

    /** The trees of a kit in the order the crew walks. */
    List<KitLife.Tree> trees(KitId kit) {
        return jdbc.sql("SELECT * FROM kit_tree WHERE kit_id = ? ORDER BY step")
                .param(kit.value())
                .query((row, number) -> new KitLife.Tree(
                        row.getString("tree_id"),
                        row.getObject("girth_mm", Long.class),
                        row.getInt("bands"),
                        row.getLong("tape_mm"),
                        row.getLong("mesh_mm"),
                        row.getLong("fasteners")))
                .list();
    }

    /**
     * What was chosen for a kit, in the order it was chosen. Until it is handed out the bin is the one where the reel
     * or batch lies now, because somebody may have moved it since; afterwards it is the one where it was found.
     */
    List<KitLife.Picked> picks(KitId kit) {
        return jdbc.sql("""
            SELECT k.kit_id, k.step, k.id, k.material, k.kind, k.there, k.quantity,
                   coalesce(now.place, k.place) AS place
            FROM kit_pick k
            JOIN kit_life l ON l.kit_id = k.kit_id
            LEFT JOIN LATERAL (SELECT p.place_kind || ':' || p.place_id AS place FROM (
                      SELECT r.place_kind, r.place_id, r.quantity FROM reel_place r
                       WHERE r.id = k.id AND k.kind <> 'FASTENER'
                      UNION ALL
                      SELECT b.place_kind, b.place_id, b.quantity FROM batch_place b
                       WHERE b.id = k.id AND k.kind = 'FASTENER') p
                  WHERE l.handed_out_at IS NULL AND p.place_kind = 'depot' AND p.quantity > 0
                    AND split_part(p.place_id, '/', 1) = l.depot_id
                  ORDER BY p.quantity DESC, p.place_id LIMIT 1) now ON true
            WHERE k.kit_id = ? ORDER BY k.step\
            """)
                .param(kit.value())
                .query((row, number) -> new KitLife.Picked(
                        row.getString("id"),
                        row.getString("material"),
                        MaterialKind.valueOf(row.getString("kind")),
                        Place.parse(row.getString("place")).bin(),
                        row.getLong("there"),
                        row.getLong("quantity"),
                        cuts(kit, row.getInt("step"))))
                .list();
    }

    private List<KitLife.CutFor> cuts(KitId kit, int pick) {
        return jdbc.sql("SELECT * FROM kit_cut WHERE kit_id = ? AND pick = ? ORDER BY step")
                .params(kit.value(), pick)
                .query((row, number) ->
                        new KitLife.CutFor(row.getString("tree_id"), row.getInt("pieces"), row.getLong("each_mm")))
                .list();
    }

    private static KitLife life(ResultSet row, int number) throws SQLException {
        return new KitLife(
                row.getString("kit_id"),
                row.getString("depot_id"),
                row.getString("crew_id"),
                row.getString("person_id"),
                row.getString("state"),
                row.getObject("began_at", OffsetDateTime.class).toInstant(),
                instant(row, "reserved_at"),
                instant(row, "until"),
                instant(row, "released_at"),
                row.getString("release_reason"),
                instant(row, "handed_out_at"),
                row.getString("handed_out_by"),
                instant(row, "signed_at"),
                row.getString("signed_by"),
                instant(row, "settled_at"),
                row.getInt("reopened"),
                instant(row, "reopened_at"),
                row.getString("rule"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
