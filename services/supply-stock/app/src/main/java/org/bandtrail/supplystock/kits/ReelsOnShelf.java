package org.bandtrail.supplystock.kits;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.kitlists.ReelOnShelf;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The reels of a material that a depot has, in its bins or set aside, with who has them reserved. */
@Repository
class ReelsOnShelf {
    private final JdbcClient jdbc;

    ReelsOnShelf(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * All reels of the material at the depot, by label.
     *
     * @param kit the kit that asks; its own reservations do not count
     * @param now reservations that are over by then do not count
     */
    List<ReelOnShelf> of(MaterialCode material, DepotId depot, KitId kit, Instant now) {
        return jdbc.sql("""
            SELECT b.id, b.bought, b.received_at, p.place, p.there, d.expires_on,
                   (SELECT min(h.kit_id) FROM hold h
                     WHERE h.held = 'reel:' || b.id AND h.kit_id <> :kit AND h.until > :now) AS held_for
            FROM reel_balance b
            JOIN (SELECT id, sum(quantity) AS there,
                         (array_agg(place_kind || ':' || place_id
                                    ORDER BY quantity DESC, place_id))[1] AS place
                  FROM reel_place
                  WHERE place_kind IN ('depot', 'set-aside') AND split_part(place_id, '/', 1) = :depot
                    AND quantity > 0
                  GROUP BY id, place_kind) p ON p.id = b.id
            LEFT JOIN delivered_holding d ON d.holding = 'reel' AND d.id = b.id
            WHERE b.material = :material
            ORDER BY b.id\
            """)
                .param("kit", kit.value())
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("depot", depot.value())
                .param("material", material.value())
                .query(ReelsOnShelf::reel)
                .list();
    }

    private static ReelOnShelf reel(ResultSet row, int number) throws SQLException {
        String heldFor = row.getString("held_for");
        return new ReelOnShelf(
                new ReelId(row.getString("id")),
                Place.parse(row.getString("place")),
                Length.ofMm(row.getLong("there")),
                Length.ofMm(row.getLong("bought")),
                row.getObject("expires_on", LocalDate.class),
                instant(row.getObject("received_at", OffsetDateTime.class)),
                heldFor == null ? null : new KitId(heldFor));
    }

    private static @Nullable Instant instant(@Nullable OffsetDateTime time) {
        return time == null ? null : time.toInstant();
    }
}
