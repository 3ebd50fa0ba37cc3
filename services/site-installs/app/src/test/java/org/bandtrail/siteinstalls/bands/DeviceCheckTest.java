package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.siteinstalls.bands.BandSamples.BOOKS;
import static org.bandtrail.siteinstalls.bands.BandSamples.FITTING;
import static org.bandtrail.siteinstalls.bands.BandSamples.NOON;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DeviceCheckTest {
    private static final DeviceKinds KINDS = new DeviceKinds();

    private static FitDetails details(
            String device, @Nullable String deviation, @Nullable Length seam, @Nullable Boolean closedBelow) {
        return new FitDetails(device, 1, deviation, List.of(), seam, closedBelow, null, null, List.of(), List.of());
    }

    private static Books books(String device, @Nullable KnownReel around) {
        return new Books(
                true,
                BOOKS.tree(),
                List.of(),
                null,
                around,
                BOOKS.meshReel(),
                BOOKS.policy(),
                KINDS.named(device).orElse(null));
    }

    private static List<String> codes(FitDetails details, @Nullable Piece mesh, @Nullable KnownReel around) {
        Fitting fitting = new Fitting(
                FITTING.bandId(),
                FITTING.treeId(),
                FITTING.siteId(),
                FITTING.crewId(),
                FITTING.personId(),
                FITTING.girth(),
                FITTING.height(),
                FITTING.tape(),
                mesh,
                FITTING.fasteners(),
                details);
        return BandCheck.findings(fitting, books(details.device(), around), Occurred.at(NOON)).stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void a_kind_nobody_described_is_flagged_and_stored_all_the_same() {
        assertThat(codes(details("kite", null, null, null), FITTING.mesh(), BOOKS.tapeReel()))
                .containsExactly("device-unknown");
    }

    @Test
    void a_band_alone_is_questioned_until_a_reason_is_given() {
        assertThat(codes(details("sticky-band-alone", null, null, null), null, BOOKS.tapeReel()))
                .containsExactly("device-questioned");
        assertThat(codes(details("sticky-band-alone", "indoors, no birds", null, null), null, BOOKS.tapeReel()))
                .isEmpty();
    }

    @Test
    void a_seam_takes_from_the_stand_off() {
        // By hand: (1465 - 1234 - 75) / (2 pi) = 24.8, 25 mm as asked; with a seam of 80 it is 24.0.
        assertThat(codes(details("sticky-band", null, Length.ofMm(75), null), FITTING.mesh(), BOOKS.tapeReel()))
                .isEmpty();
        assertThat(codes(details("sticky-band", null, Length.ofMm(80), null), FITTING.mesh(), BOOKS.tapeReel()))
                .containsExactly("guard-too-close");
    }

    @Test
    void a_guard_open_below_is_flagged_where_the_policy_closes_it_and_not_for_screen() {
        assertThat(codes(details("sticky-band", null, null, false), FITTING.mesh(), BOOKS.tapeReel()))
                .containsExactly("guard-open-below");
        assertThat(codes(details("screen-band", null, null, false), FITTING.mesh(), BOOKS.tapeReel()))
                .doesNotContain("guard-open-below");
    }

    @Test
    void a_funnel_trap_is_cut_from_mesh_and_wants_no_guard() {
        assertThat(codes(details("funnel-trap", "cut for a band", null, null), null, BOOKS.meshReel()))
                .isEmpty();
        assertThat(codes(details("funnel-trap", "cut for a band", null, null), null, BOOKS.tapeReel()))
                .containsExactly("tape-reel-wrong-kind");
    }
}
