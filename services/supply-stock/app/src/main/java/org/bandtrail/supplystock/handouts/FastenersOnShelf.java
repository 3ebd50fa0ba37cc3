package org.bandtrail.supplystock.handouts;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which batches of a material a depot has, with when each was received, less what other kits have reserved. */
@Repository
public class FastenersOnShelf {
    private final JdbcClient jdbc;

    FastenersOnShelf(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The batches, oldest first.
     *
     * @param kit the kit that asks; what it has reserved itself counts as free
     * @param now reservations that are over by then do not count
     */
    public List<OldestFirst.OnShelf> of(MaterialCode material, DepotId depot, KitId kit, Instant now) {
        return jdbc.sql("""
            SELECT b.id, b.received_at, sum(p.quantity) - coalesce((SELECT sum(h.quantity) FROM hold h
                    WHERE h.held = 'batch:' || b.id AND h.kit_id <> :kit AND h.until > :now), 0)
            FROM batch_place p JOIN batch_balance b ON b.id = p.id
            WHERE p.place_kind = 'depot' AND split_part(p.place_id, '/', 1) = :depot AND p.quantity > 0
              AND b.material = :material
            GROUP BY b.id, b.received_at
            ORDER BY b.received_at, b.id\
            """)
                .param("kit", kit.value())
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("depot", depot.value())
                .param("material", material.value())
                .query((row, number) -> new OldestFirst.OnShelf(
                        new BatchId(row.getString(1)),
                        row.getObject(2, OffsetDateTime.class).toInstant(),
                        Pieces.of(row.getLong(3))))
                .list();
    }

    /** How many pieces of a batch the depot has, as the balances know it now. */
    public long there(BatchId batch, DepotId depot) {
        return jdbc.sql("""
            SELECT coalesce(sum(quantity), 0) FROM batch_place
            WHERE id = ? AND place_kind = 'depot' AND split_part(place_id, '/', 1) = ?\
            """)
                .params(batch.value(), depot.value())
                .query(Long.class)
                .single();
    }

    /** The bin where most of a batch lies in a depot, or the depot itself if it lies loose. */
    public String place(BatchId batch, DepotId depot) {
        return jdbc.sql("""
            SELECT place_kind || ':' || place_id FROM batch_place
            WHERE id = ? AND place_kind = 'depot' AND split_part(place_id, '/', 1) = ? AND quantity > 0
            ORDER BY quantity DESC, place_id LIMIT 1\
            """)
                .params(batch.value(), depot.value())
                .query(String.class)
                .optional()
                .orElse("depot:" + depot);
    }
}
