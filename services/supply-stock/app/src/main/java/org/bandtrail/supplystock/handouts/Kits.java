package org.bandtrail.supplystock.handouts;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The kits, newest first. */
@Repository
public class Kits {
    private final JdbcClient jdbc;

    Kits(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of kits.
     *
     * @param onlyOpen only kits of which somebody still has something
     * @param before kit before which the page begins, or null for the newest
     */
    public List<KitRow> page(boolean onlyOpen, @Nullable String before, int limit) {
        Map<String, Draft> kits = new LinkedHashMap<>();
        jdbc.sql("""
            SELECT k.kit_id, k.depot_id, k.crew_id, k.person_id, k.handed_out_at, l.id, l.material, l.kind,
                   l.quantity, coalesce(r.quantity, b.quantity, 0) AS still_out
            FROM (SELECT * FROM kit WHERE (NOT :onlyOpen OR EXISTS (
                      SELECT 1 FROM kit_line o
                      LEFT JOIN reel_place ro ON ro.id = o.id AND ro.place_kind = 'crew'
                           AND ro.place_id = kit.person_id AND o.kind <> 'FASTENER'
                      LEFT JOIN batch_place bo ON bo.id = o.id AND bo.place_kind = 'crew'
                           AND bo.place_id = kit.person_id AND o.kind = 'FASTENER'
                      WHERE o.kit_id = kit.kit_id AND coalesce(ro.quantity, bo.quantity, 0) <> 0))
                  AND (:before::varchar IS NULL OR (handed_out_at, kit_id) <
                      (SELECT handed_out_at, kit_id FROM kit WHERE kit_id = :before))
                  ORDER BY handed_out_at DESC, kit_id DESC LIMIT :limit) k
            JOIN kit_line l ON l.kit_id = k.kit_id
            LEFT JOIN reel_place r ON r.id = l.id AND r.place_kind = 'crew' AND r.place_id = k.person_id
                 AND l.kind <> 'FASTENER'
            LEFT JOIN batch_place b ON b.id = l.id AND b.place_kind = 'crew' AND b.place_id = k.person_id
                 AND l.kind = 'FASTENER'
            ORDER BY k.handed_out_at DESC, k.kit_id DESC, l.id\
            """)
                .param("onlyOpen", onlyOpen)
                .param("before", before)
                .param("limit", limit)
                .query((row, number) -> {
                    kits.computeIfAbsent(row.getString("kit_id"), unused -> new Draft())
                            .add(
                                    row.getString("kit_id"),
                                    row.getString("depot_id"),
                                    row.getString("crew_id"),
                                    row.getString("person_id"),
                                    row.getObject("handed_out_at", OffsetDateTime.class)
                                            .toInstant(),
                                    new KitRow.Line(
                                            row.getString("id"),
                                            row.getString("material"),
                                            row.getString("kind"),
                                            row.getLong("quantity"),
                                            row.getLong("still_out")));
                    return number;
                })
                .list();
        return kits.values().stream().map(Draft::row).toList();
    }

    /** A kit while its lines are being read. */
    private static final class Draft {
        private final List<KitRow.Line> reels = new ArrayList<>();
        private final List<KitRow.Line> batches = new ArrayList<>();
        private KitRow head = new KitRow("", "", "", "", Instant.EPOCH, false, List.of(), List.of());

        void add(String kit, String depot, String crew, String person, Instant at, KitRow.Line line) {
            (line.kind().equals("FASTENER") ? batches : reels).add(line);
            head = new KitRow(kit, depot, crew, person, at, head.open() || line.stillOut() != 0, reels, batches);
        }

        KitRow row() {
            return head;
        }
    }
}
