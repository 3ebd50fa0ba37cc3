package org.bandtrail.siteinstalls.depotstock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@OnPostgres
class DepotStockTest {
    private static final Instant NOW = Instant.parse("2026-05-04T08:00:00Z");
    private final DepotChanges changes;
    private final DepotStock stock;

    @Autowired
    DepotStockTest(DepotChanges changes, DepotStock stock) {
        this.changes = changes;
        this.stock = stock;
    }

    private static DepotChanges.Holding reel(String id) {
        return new DepotChanges.Holding("reel", id);
    }

    private void received(DepotChanges.Holding what, String material, MaterialKind kind, long quantity) {
        changes.received(what, new DepotChanges.Receipt(material, kind, quantity, NOW, 4200, "USD"));
    }

    @Test
    void changes_add_up_in_any_order_and_an_empty_place_is_forgotten() {
        DepotId depot = new DepotId("DS-A");
        changes.changed(reel("DS-A1"), depot, null, false, -8_000);
        changes.changed(reel("DS-A1"), depot, "B-1", false, 42_000);
        changes.changed(reel("DS-A1"), depot, null, false, 50_000);
        changes.changed(reel("DS-A1"), depot, null, false, -42_000);
        assertThat(stock.reels(depot, new MaterialCode("DS-A-T"))).isEmpty();

        received(reel("DS-A1"), "DS-A-T", MaterialKind.TAPE, 50_000);

        ReelThere there = stock.reels(depot, new MaterialCode("DS-A-T")).getFirst();
        assertThat(there.lengthMm()).isEqualTo(42_000);
        assertThat(there.bin()).isEqualTo("B-1");
        assertThat(there.opened()).isTrue();
        assertThat(stock.depots()).contains(depot);
    }

    @Test
    void what_is_set_aside_or_kept_by_a_kit_is_there_but_not_free() {
        DepotId depot = new DepotId("DS-B");
        for (String id : List.of("DS-B1", "DS-B2", "DS-B3")) {
            received(reel(id), "DS-B-T", MaterialKind.TAPE, 50_000);
            changes.changed(reel(id), depot, null, id.equals("DS-B3"), id.equals("DS-B2") ? 12_500 : 50_000);
        }
        changes.reserved(reel("DS-B1"), "K-1", 50_000, NOW.plusSeconds(60), 0);

        assertThat(stock.materials(depot, NOW))
                .containsExactly(new MaterialThere(
                        new MaterialCode("DS-B-T"), MaterialKind.TAPE, 62_500, 50_000, 50_000, 12_500, 3));
        assertThat(stock.materials(depot, NOW.plusSeconds(60)).getFirst().free())
                .as("a reservation lapses by itself")
                .isEqualTo(62_500);
        assertThat(stock.reels(depot, new MaterialCode("DS-B-T")))
                .as("not the one set aside")
                .hasSize(2);
    }

    @Test
    void an_older_word_about_a_reservation_changes_nothing() {
        DepotId depot = new DepotId("DS-C");
        DepotChanges.Holding batch = new DepotChanges.Holding("batch", "DS-C1");
        received(batch, "DS-C-P", MaterialKind.FASTENER, 300);
        changes.changed(batch, depot, null, false, 300);
        changes.reserved(batch, "K-1", 120, NOW.plusSeconds(60), 0);
        assertThat(stock.batches(depot, new MaterialCode("DS-C-P"), NOW)
                        .getFirst()
                        .free())
                .isEqualTo(180);

        changes.reserved(batch, "K-1", 0, null, 1);
        changes.reserved(batch, "K-1", 120, NOW.plusSeconds(60), 0);

        assertThat(stock.batches(depot, new MaterialCode("DS-C-P"), NOW))
                .containsExactly(new BatchThere(new BatchId("DS-C1"), null, 300, 0, NOW));
    }
}
