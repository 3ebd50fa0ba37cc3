package org.bandtrail.siteinstalls.depotstock;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialKind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Writes what supply-stock told; the caller sees to it that each change is heard once. */
@Repository
public class DepotChanges {
    private final JdbcClient jdbc;

    DepotChanges(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A reel or a batch: {@code holding} is the one or the other word. */
    public record Holding(String holding, String id) {}

    /**
     * What it is.
     *
     * @param received millimetres or pieces
     * @param costMinor of all of it, smallest unit of the currency
     */
    public record Receipt(
            String material, MaterialKind kind, long received, Instant at, long costMinor, String currency) {}

    /** Remembers what a reel or batch is and when it came. */
    public void received(Holding what, Receipt receipt) {
        jdbc.sql("""
                        INSERT INTO depot_holding
                            (holding, id, material_code, kind, received, received_at, cost_minor, currency)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT (holding, id) DO UPDATE SET material_code = excluded.material_code,
                            kind = excluded.kind, received = excluded.received, received_at = excluded.received_at,
                            cost_minor = excluded.cost_minor, currency = excluded.currency""")
                .params(
                        what.holding(),
                        what.id(),
                        receipt.material(),
                        receipt.kind().name(),
                        receipt.received(),
                        receipt.at().atOffset(ZoneOffset.UTC),
                        receipt.costMinor(),
                        receipt.currency())
                .update();
    }

    /** Remembers what a label says; null where it says nothing. */
    public void labelled(Holding what, @Nullable String lot, @Nullable LocalDate expiresOn) {
        jdbc.sql("""
                        INSERT INTO depot_holding (holding, id, lot, expires_on) VALUES (?, ?, ?, ?)
                        ON CONFLICT (holding, id) DO UPDATE SET lot = excluded.lot, expires_on = excluded.expires_on""")
                .param(what.holding())
                .param(what.id())
                .param(lot)
                .param(expiresOn)
                .update();
    }

    /**
     * Adds a change at one place.
     *
     * @param bin null if loose or set aside
     * @param change millimetres or pieces, below zero if it became less
     */
    public void changed(Holding what, DepotId depot, @Nullable String bin, boolean setAside, long change) {
        String where = bin == null ? "" : bin;
        // A place that comes to nothing has no row: the list of what lies in a depot stays as long as the depot is
        // full.
        int emptied = jdbc.sql("""
                        DELETE FROM depot_place WHERE holding = ? AND id = ? AND depot_id = ? AND bin = ?
                            AND set_aside = ? AND quantity + ? = 0""")
                .params(what.holding(), what.id(), depot.value(), where, setAside, change)
                .update();
        if (emptied == 0) {
            jdbc.sql("""
                            INSERT INTO depot_place (holding, id, depot_id, bin, set_aside, quantity)
                            VALUES (?, ?, ?, ?, ?, ?)
                            ON CONFLICT (holding, id, depot_id, bin, set_aside)
                            DO UPDATE SET quantity = depot_place.quantity + excluded.quantity""")
                    .params(what.holding(), what.id(), depot.value(), where, setAside, change)
                    .update();
        }
    }

    /**
     * Takes the newest word about what a kit keeps; an older word that comes late changes nothing.
     *
     * @param quantity millimetres or pieces, 0 if it keeps nothing
     * @param until when it lapses, null if it keeps nothing
     */
    public void reserved(Holding what, String kit, long quantity, @Nullable Instant until, long sequence) {
        jdbc.sql("""
                        INSERT INTO depot_reservation (holding, id, kit_id, quantity, until, sequence)
                        VALUES (?, ?, ?, ?, ?, ?)
                        ON CONFLICT (holding, id, kit_id) DO UPDATE SET quantity = excluded.quantity,
                            until = excluded.until, sequence = excluded.sequence
                        WHERE depot_reservation.sequence < excluded.sequence""")
                .param(what.holding())
                .param(what.id())
                .param(kit)
                .param(quantity)
                .param(until == null ? null : until.atOffset(ZoneOffset.UTC))
                .param(sequence)
                .update();
    }
}
