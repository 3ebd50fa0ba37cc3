package org.bandtrail.supplystock.handouts;

import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which batches of a material a depot has, with when each was received. */
@Repository
class FastenersOnShelf {
    private final JdbcClient jdbc;

    FastenersOnShelf(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<OldestFirst.OnShelf> of(MaterialCode material, DepotId depot) {
        return jdbc.sql("""
                        SELECT b.id, b.received_at, sum(p.quantity)
                        FROM batch_place p JOIN batch_balance b ON b.id = p.id
                        WHERE p.place_kind = 'depot' AND split_part(p.place_id, '/', 1) = ? AND p.quantity > 0
                          AND b.material = ?
                        GROUP BY b.id, b.received_at
                        ORDER BY b.received_at, b.id""")
                .params(depot.value(), material.value())
                .query((row, number) -> new OldestFirst.OnShelf(
                        new BatchId(row.getString(1)),
                        row.getObject(2, OffsetDateTime.class).toInstant(),
                        Pieces.of(row.getLong(3))))
                .list();
    }
}
