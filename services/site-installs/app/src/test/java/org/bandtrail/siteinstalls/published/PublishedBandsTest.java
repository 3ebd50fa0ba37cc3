package org.bandtrail.siteinstalls.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.bands.BandEvent;
import org.bandtrail.siteinstalls.bands.Fasteners;
import org.bandtrail.siteinstalls.bands.FitDetails;
import org.bandtrail.siteinstalls.bands.Piece;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.siteinstalls.contract.v1.MaterialMove;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.testing.GoldenFiles;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class PublishedBandsTest {
    private static final DeviceKinds KINDS = new DeviceKinds();

    private static BandEvent.BandFitted fitted(
            @Nullable Piece mesh, @Nullable Fasteners fasteners, FitDetails details) {
        return new BandEvent.BandFitted(
                new BandId("B-0001"),
                new TreeId("ALDER-1304"),
                new SiteId("ALDER"),
                new CrewId("C-2"),
                new PersonId("P-07"),
                Length.ofMm(1234),
                Length.ofMm(1200),
                new Piece(new ReelId("R-0001"), Length.ofMm(1325)),
                mesh,
                fasteners,
                LocalDate.parse("2026-10-01"),
                1,
                List.of(),
                details,
                new PersonId("P-07"),
                new Occurred(Instant.parse("2026-05-04T09:15:00Z"), Instant.parse("2026-05-04T09:15:20Z")));
    }

    @Test
    void a_band_with_guard_and_pins_is_told_as_in_the_sample() {
        BandFitted told = PublishedBands.told(
                fitted(
                        new Piece(new ReelId("R-0101"), Length.ofMm(1465)),
                        new Fasteners(new BatchId("F-0001"), Pieces.of(9)),
                        FitDetails.USUAL),
                KINDS);
        BandFitted sample = JsonMapper.builder()
                .build()
                .treeToValue(
                        GoldenFiles.in("samples")
                                .named("site-installs.band-fitted.v1.1.json")
                                .orElseThrow()
                                .json(),
                        BandFitted.class);
        assertThat(told.device()).isEqualTo("sticky-band");
        assertThat(told.position()).isEqualTo(1);
        assertThat(told)
                .usingRecursiveComparison()
                .ignoringFields("device", "position", "moves.reusable")
                .isEqualTo(sample);
        assertThat(told.moves())
                .as("tape never, mesh and pins when they are sound")
                .extracting(MaterialMove::reusable)
                .containsExactly(false, true, true);
        assertThat(told.subject()).isEqualTo("band/B-0001");
    }

    @Test
    void a_bare_band_moves_its_tape_and_nothing_else() {
        BandFitted told = PublishedBands.told(fitted(null, null, FitDetails.USUAL), KINDS);
        assertThat(told.meshReelId()).isNull();
        assertThat(told.fastenerPieces()).isZero();
        assertThat(told.moves())
                .containsExactly(
                        new MaterialMove(MaterialMove.REEL, "R-0001", 1325, "crew:P-07", "tree:ALDER-1304", false));
    }

    @Test
    void further_parts_of_a_device_are_moved_to_the_tree_as_well() {
        FitDetails trap = new FitDetails(
                "funnel-trap",
                2,
                null,
                List.of(),
                null,
                null,
                null,
                null,
                List.of(new Piece(new ReelId("R-0102"), Length.ofMm(450))),
                List.of(new Fasteners(new BatchId("F-0007"), Pieces.of(1))));
        BandFitted told = PublishedBands.told(fitted(null, null, trap), KINDS);
        assertThat(told.device()).isEqualTo("funnel-trap");
        assertThat(told.position()).isEqualTo(2);
        assertThat(told.moves())
                .containsExactly(
                        new MaterialMove(MaterialMove.REEL, "R-0001", 1325, "crew:P-07", "tree:ALDER-1304", true),
                        new MaterialMove(MaterialMove.REEL, "R-0102", 450, "crew:P-07", "tree:ALDER-1304", null),
                        new MaterialMove(MaterialMove.BATCH, "F-0007", 1, "crew:P-07", "tree:ALDER-1304", true));
    }

    @Test
    void of_a_kind_nobody_described_nothing_is_said_about_using_it_again() {
        FitDetails odd = new FitDetails("kite", 1, null, List.of(), null, null, null, null, List.of(), List.of());
        assertThat(PublishedBands.told(fitted(null, null, odd), KINDS).moves())
                .extracting(MaterialMove::reusable)
                .containsOnlyNulls();
    }
}
