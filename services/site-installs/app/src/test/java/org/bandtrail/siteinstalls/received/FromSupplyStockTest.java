package org.bandtrail.siteinstalls.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.depotstock.DepotStock;
import org.bandtrail.siteinstalls.depotstock.ReelThere;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

@OnPostgres
class FromSupplyStockTest {
    private static final DepotId NORTH = new DepotId("NORTH");
    private final KnownReels reels;
    private final FromSupplyStock from;
    private final DepotStock stock;

    @Autowired
    FromSupplyStockTest(KnownReels reels, FromSupplyStock from, DepotStock stock) {
        this.reels = reels;
        this.from = from;
        this.stock = stock;
    }

    /** The samples of the jar that are published by supply-stock. */
    static List<GoldenFile> samples() {
        return GoldenFiles.in("samples").files().stream()
                .filter(file -> file.storedName().startsWith("supply-stock."))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_is_heard_but_what_a_kit_carries(GoldenFile sample) {
        boolean ours = !sample.storedName().equals("supply-stock.kit-handed-out.v1");
        assertThat(from.handles(sample.storedName())).isEqualTo(ours);
        if (sample.storedName().equals("supply-stock.reel-received.v1")) {
            JsonNode told = sample.json();
            from.handle(envelope(sample.storedName(), told));
            from.handle(envelope(sample.storedName(), told));
            ReelId reelId = new ReelId(told.path("reelId").asString());
            JsonNode opening = told.path("openingMm");
            KnownReel expected = new KnownReel(
                    reelId,
                    new MaterialCode(told.path("materialCode").asString()),
                    MaterialKind.valueOf(told.path("kind").asString()),
                    Length.ofMm(told.path("widthMm").asLong()),
                    opening.isNumber() ? Length.ofMm(opening.asLong()) : null);
            assertThat(reels.known(List.of(reelId))).containsEntry(reelId, expected);
        }
    }

    @Test
    void a_reel_lies_in_its_depot_with_bin_and_expiry_and_is_kept_for_its_kit() {
        hear("supply-stock.holding-labelled.v1.1.json");
        hear("supply-stock.depot-stock-changed.v1.1.json");
        hear("supply-stock.holding-reserved.v1.1.json");

        ReelThere reel = stock.reels(NORTH, new MaterialCode("TAPE-127")).getFirst();
        assertThat(reel.reelId()).isEqualTo(new ReelId("R-0001"));
        assertThat(reel.bin()).isEqualTo("A-03");
        assertThat(reel.lengthMm()).isEqualTo(50_000);
        assertThat(reel.opened()).isFalse();
        assertThat(reel.costMinorPerKm()).isEqualTo(84_000);
        assertThat(reel.goodOn(LocalDate.parse("2027-03-31"))).isTrue();
        assertThat(reel.goodOn(LocalDate.parse("2027-04-01"))).isFalse();
        assertThat(reel.free(Instant.parse("2026-05-05T05:59:59Z"))).isFalse();
        assertThat(reel.free(Instant.parse("2026-05-05T06:00:00Z"))).isTrue();
    }

    private void hear(String sample) {
        GoldenFile file = GoldenFiles.in("samples").named(sample).orElseThrow();
        from.handle(envelope(file.storedName(), file.json()));
    }

    private static Envelope envelope(String type, JsonNode told) {
        return new Envelope(
                "E-1", "/bandtrail/supply-stock", type, "reel/R-0001", Instant.parse("2026-04-01T09:00:00Z"), told);
    }
}
