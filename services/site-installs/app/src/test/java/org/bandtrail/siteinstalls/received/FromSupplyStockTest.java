package org.bandtrail.siteinstalls.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

@OnPostgres
class FromSupplyStockTest {
    private final KnownReels reels;

    @Autowired
    FromSupplyStockTest(KnownReels reels) {
        this.reels = reels;
    }

    /** The samples of the jar that are published by supply-stock. */
    static List<GoldenFile> samples() {
        return GoldenFiles.in("samples").files().stream()
                .filter(file -> file.storedName().startsWith("supply-stock."))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_reel_is_known_afterwards_and_every_other_event_is_passed_over_by_name(GoldenFile sample) {
        FromSupplyStock from = new FromSupplyStock(reels);
        boolean ours = sample.storedName().equals("supply-stock.reel-received.v1");
        assertThat(from.handles(sample.storedName())).isEqualTo(ours);
        if (ours) {
            JsonNode told = sample.json();
            Envelope envelope = new Envelope(
                    "E-1",
                    "/bandtrail/supply-stock",
                    sample.storedName(),
                    "reel/R-0001",
                    Instant.parse("2026-04-01T09:00:00Z"),
                    told);
            from.handle(envelope);
            from.handle(envelope);
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
}
