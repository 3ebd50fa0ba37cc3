package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bandtrail.siteinstalls.bands.BandSamples.BAND;
import static org.bandtrail.siteinstalls.bands.BandSamples.BOOKS;
import static org.bandtrail.siteinstalls.bands.BandSamples.FITTING;
import static org.bandtrail.siteinstalls.bands.BandSamples.NOON;
import static org.bandtrail.siteinstalls.bands.BandSamples.after;
import static org.bandtrail.siteinstalls.bands.BandSamples.fit;
import static org.bandtrail.siteinstalls.bands.BandSamples.replaceTape;
import static org.bandtrail.siteinstalls.bands.BandSamples.takeDown;

import java.time.Duration;
import java.time.LocalDate;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.bands.BandEvent.BandFitted;
import org.bandtrail.siteinstalls.bands.BandEvent.BandTakenDown;
import org.junit.jupiter.api.Test;

class BandTest {
    private static BandFitted fitted(Fitting fitting, Books books) {
        return (BandFitted) Band.NONE.decide(fit(fitting, books, NOON)).getFirst();
    }

    @Test
    void a_fitting_that_agrees_with_the_books_is_stored_without_findings() {
        BandFitted fitted = fitted(FITTING, BOOKS);
        assertThat(fitted.findings()).isEmpty();
        assertThat(fitted.girth()).isEqualTo(Length.ofMm(1234));
        assertThat(fitted.tape()).isEqualTo(FITTING.tape());
        assertThat(fitted.policyVersion()).isEqualTo(1);
        // 150 days after 2026-05-04
        assertThat(fitted.mustRemoveBy()).isEqualTo(LocalDate.parse("2026-10-01"));
    }

    @Test
    void without_a_measured_girth_the_registered_one_is_kept_and_without_that_the_tape_tells() {
        Fitting unmeasured = new Fitting(
                BAND,
                FITTING.treeId(),
                FITTING.siteId(),
                FITTING.crewId(),
                FITTING.personId(),
                null,
                null,
                FITTING.tape(),
                FITTING.mesh(),
                FITTING.fasteners());
        assertThat(fitted(unmeasured, BOOKS).girth()).isEqualTo(Length.ofMm(1230));
        assertThat(fitted(unmeasured, BOOKS).height()).isEqualTo(Length.ofMm(1200));
        Books without = new Books(
                true, null, BOOKS.bandsUp(), null, BOOKS.tapeReel(), BOOKS.meshReel(), BOOKS.policy(), BOOKS.device());
        // 1325 - 50 - 2 x 19
        assertThat(fitted(unmeasured, without).girth()).isEqualTo(Length.ofMm(1237));
    }

    @Test
    void a_second_fitting_of_a_band_is_accepted_and_flagged() {
        Band band = after(fit(FITTING, BOOKS, NOON));
        BandFitted again = (BandFitted)
                band.decide(fit(FITTING, BOOKS, NOON.plusSeconds(60))).getFirst();
        assertThat(again.findings()).extracting(Finding::code).containsExactly("band-fitted-before");
    }

    @Test
    void a_band_is_down_once_taken_down_and_up_again_once_fitted_after_that() {
        Band down = after(fit(FITTING, BOOKS, NOON), takeDown(NOON.plus(Duration.ofDays(30))));
        assertThat(down.up()).isFalse();
        Band again = after(
                fit(FITTING, BOOKS, NOON),
                takeDown(NOON.plus(Duration.ofDays(30))),
                fit(FITTING, BOOKS, NOON.plus(Duration.ofDays(31))));
        assertThat(again.up()).isTrue();
    }

    @Test
    void a_fitting_that_arrives_after_the_teardown_leaves_the_band_down() {
        Band band = after(takeDown(NOON.plus(Duration.ofDays(30))), fit(FITTING, BOOKS, NOON));
        assertThat(band.up()).isFalse();
        assertThat(band.fitted()).isEqualTo(NOON);
    }

    @Test
    void the_tape_that_was_put_up_last_hangs_whatever_was_told_last() {
        Band band = after(
                replaceTape("R-0009", NOON.plus(Duration.ofDays(9))),
                replaceTape("R-0005", NOON.plus(Duration.ofDays(5))),
                fit(FITTING, BOOKS, NOON));
        assertThat(band.tape())
                .isEqualTo(new Band.Hung(
                        new Piece(new ReelId("R-0009"), Length.ofMm(1325)), NOON.plus(Duration.ofDays(9))));
    }

    @Test
    void an_event_of_another_band_is_a_damaged_history() {
        Band band = after(fit(FITTING, BOOKS, NOON));
        BandTakenDown other =
                new BandTakenDown(new BandId("B-0002"), "TD-9", null, null, BandSamples.PERSON, Occurred.at(NOON));
        assertThatThrownBy(() -> band.evolve(other)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void pieces_and_counts_of_nothing_are_no_facts() {
        assertThatThrownBy(() -> new Piece(BandSamples.TAPE, Length.ZERO)).hasMessageContaining("R-0001");
        assertThatThrownBy(
                        () -> new Fasteners(new org.bandtrail.kernel.BatchId("F-1"), org.bandtrail.kernel.Pieces.ZERO))
                .hasMessageContaining("F-1");
    }
}
