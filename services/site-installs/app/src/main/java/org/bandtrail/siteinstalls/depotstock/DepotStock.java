package org.bandtrail.siteinstalls.depotstock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what lies in the depots. Only what was received by the books and lies there with more than nothing counts. */
@Repository
public class DepotStock {
    private static final String KEPT = """
            (SELECT coalesce(sum(r.quantity), 0)::bigint FROM depot_reservation r
              WHERE r.holding = h.holding AND r.id = h.id AND r.quantity > 0 AND r.until > :now)""";

    private final JdbcClient jdbc;

    DepotStock(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The reels of a material in a depot, the oldest first; those kits keep are among them and say so. */
    public List<ReelThere> reels(DepotId depot, MaterialCode material) {
        return jdbc.sql("""
                        SELECT h.id, p.bin, p.quantity, h.received, h.expires_on, h.received_at, h.cost_minor,
                               r.kit_id, r.until
                        FROM depot_holding h
                        JOIN (SELECT id, sum(quantity)::bigint AS quantity,
                                     (array_agg(bin ORDER BY quantity DESC))[1] AS bin
                              FROM depot_place WHERE holding = 'reel' AND depot_id = ? AND NOT set_aside
                              GROUP BY id HAVING sum(quantity) > 0) p ON p.id = h.id
                        LEFT JOIN LATERAL (SELECT kit_id, until FROM depot_reservation
                              WHERE holding = 'reel' AND id = h.id AND quantity > 0
                              ORDER BY until DESC LIMIT 1) r ON true
                        WHERE h.holding = 'reel' AND h.material_code = ?
                        ORDER BY h.received_at, h.id""")
                .params(depot.value(), material.value())
                .query(DepotStock::reel)
                .list();
    }

    /** The batches of a material in a depot, the oldest first. */
    public List<BatchThere> batches(DepotId depot, MaterialCode material, Instant now) {
        return jdbc.sql("""
                        SELECT h.id, p.bin, p.quantity, %s, h.received_at
                        FROM depot_holding h
                        JOIN (SELECT id, sum(quantity)::bigint AS quantity,
                                     (array_agg(bin ORDER BY quantity DESC))[1] AS bin
                              FROM depot_place WHERE holding = 'batch' AND depot_id = :depot AND NOT set_aside
                              GROUP BY id HAVING sum(quantity) > 0) p ON p.id = h.id
                        WHERE h.holding = 'batch' AND h.material_code = :material
                        ORDER BY h.received_at, h.id""".formatted(KEPT))
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("depot", depot.value())
                .param("material", material.value())
                .query((row, number) -> new BatchThere(
                        new BatchId(row.getString(1)),
                        bin(row.getString(2)),
                        row.getLong(3),
                        row.getLong(4),
                        row.getObject(5, OffsetDateTime.class).toInstant()))
                .list();
    }

    /** What lies in a depot by material, by code. */
    public List<MaterialThere> materials(DepotId depot, Instant now) {
        return jdbc.sql("""
                        SELECT material_code, kind, sum(there)::bigint, sum(least(kept, there))::bigint,
                               sum(aside)::bigint, max(greatest(0, CASE WHEN holding = 'reel' AND kept > 0 THEN 0
                                                   ELSE there - kept END))::bigint, count(*)::int
                        FROM (SELECT h.material_code, h.kind, h.holding,
                                     greatest(0, coalesce(sum(p.quantity) FILTER (WHERE NOT p.set_aside), 0)) AS there,
                                     coalesce(sum(p.quantity) FILTER (WHERE p.set_aside), 0) AS aside,
                                     %s AS kept
                              FROM depot_holding h JOIN depot_place p ON p.holding = h.holding AND p.id = h.id
                              WHERE p.depot_id = :depot AND h.material_code IS NOT NULL
                              GROUP BY h.holding, h.id) each
                        WHERE there > 0 OR aside > 0
                        GROUP BY material_code, kind ORDER BY material_code""".formatted(KEPT))
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("depot", depot.value())
                .query((row, number) -> new MaterialThere(
                        new MaterialCode(row.getString(1)),
                        MaterialKind.valueOf(row.getString(2)),
                        row.getLong(3),
                        row.getLong(4),
                        row.getLong(5),
                        row.getLong(6),
                        row.getInt(7)))
                .list();
    }

    /** The depots in which something ever lay that still does, by identity. */
    public List<DepotId> depots() {
        return jdbc.sql("SELECT DISTINCT depot_id FROM depot_place ORDER BY depot_id")
                .query((row, number) -> new DepotId(row.getString(1)))
                .list();
    }

    private static ReelThere reel(ResultSet row, int number) throws SQLException {
        long received = row.getLong(4);
        String kit = row.getString(8);
        OffsetDateTime until = row.getObject(9, OffsetDateTime.class);
        return new ReelThere(
                new ReelId(row.getString(1)),
                bin(row.getString(2)),
                row.getLong(3),
                received,
                row.getObject(5, LocalDate.class),
                row.getObject(6, OffsetDateTime.class).toInstant(),
                Math.multiplyExact(row.getLong(7), 1_000_000L) / received,
                kit == null ? null : new KitId(kit),
                until == null ? null : until.toInstant());
    }

    private static @Nullable String bin(@Nullable String stored) {
        return stored == null || stored.isEmpty() ? null : stored;
    }
}
