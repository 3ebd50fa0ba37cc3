package org.bandtrail.siteinstalls.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;
import org.bandtrail.kernel.Pieces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CuttingTest {
    private static final Length GIRTH = Length.ofMm(1234);

    // By hand: 6 in = 152.4 mm of extra without a seam: 152.4 / (2 pi) = 24.26; 12 in = 304.8 mm: 48.51.
    @ParameterizedTest
    @CsvSource({"152,0,24", "305,0,49", "305,153,24", "0,0,0", "-63,0,-10"})
    void a_guard_stands_off_by_the_spare_length_over_two_pi(long extra, long seam, long standOff) {
        Length sheet = GIRTH.plus(Length.ofMm(extra));
        assertThat(GuardStandOff.of(sheet, Length.ofMm(seam), GIRTH)).isEqualTo(Length.ofMm(standOff));
    }

    // By hand: 1234 + 50 + 2 x 19 = 1322 -> 1325 in steps of 5 mm; 1322 / 3.175 = 416.4 -> 417 x 3.175 = 1323.98.
    @ParameterizedTest
    @CsvSource({"METRIC,1325", "IMPERIAL,1324"})
    void tape_goes_round_with_overlap_and_two_tabs_up_to_the_next_step(TapeMeasure measure, long mm) {
        assertThat(TapeLength.of(GIRTH, Length.ofMm(50), Length.ofMm(19), measure))
                .isEqualTo(Length.ofMm(mm));
    }

    // By hand: 1234 + 229 = 1463 -> 1465; 1463 / 3.175 = 460.8 -> 461 x 3.175 = 1463.68.
    @ParameterizedTest
    @CsvSource({"METRIC,1465", "IMPERIAL,1464"})
    void mesh_is_longer_than_the_girth_by_the_extra(TapeMeasure measure, long mm) {
        assertThat(MeshLength.of(GIRTH, Length.ofMm(229), measure)).isEqualTo(Length.ofMm(mm));
    }

    @ParameterizedTest
    @EnumSource(TapeMeasure.class)
    void rounding_never_shortens_and_adds_less_than_a_step(TapeMeasure measure) {
        for (long mm = 1; mm <= 10_000; mm++) {
            long rounded = measure.roundUp(Length.ofMm(mm)).mm();
            assertThat(rounded).isBetween(mm, mm + 4);
        }
    }

    @Test
    void imperial_steps_are_read_back_in_eighths_of_an_inch() {
        // 52 1/8 in = 417 eighths = 1323.975 mm (NIST SP 811 B.8: 1 in = 25.4 mm).
        Length length = TapeMeasure.IMPERIAL.roundUp(Length.ofMm(1322));
        assertThat(LengthText.feetAndInches(length)).isEqualTo("4 ft 4 1/8 in");
    }

    @ParameterizedTest
    @CsvSource({"600,4", "601,5", "1500,10", "1501,11", "100,4"})
    void a_pin_for_every_started_spacing_and_never_fewer_than_the_minimum(long girth, long pins) {
        assertThat(FastenerCount.of(Length.ofMm(girth), Length.ofMm(150), Pieces.of(4)))
                .isEqualTo(Pieces.of(pins));
    }

    @Test
    void inputs_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> TapeLength.of(Length.ZERO, Length.ZERO, Length.ZERO, TapeMeasure.METRIC))
                .hasMessageContaining("girth");
        assertThatThrownBy(() -> TapeLength.of(GIRTH, Length.ofMm(-1), Length.ZERO, TapeMeasure.METRIC))
                .hasMessageContaining("overlap");
        assertThatThrownBy(() -> TapeLength.of(GIRTH, Length.ZERO, Length.ofMm(-1), TapeMeasure.METRIC))
                .hasMessageContaining("tab");
        assertThatThrownBy(() -> MeshLength.of(GIRTH, Length.ZERO, TapeMeasure.METRIC))
                .hasMessageContaining("extra");
        assertThatThrownBy(() -> GuardStandOff.of(Length.ZERO, Length.ZERO, GIRTH))
                .hasMessageContaining("sheet");
        assertThatThrownBy(() -> GuardStandOff.of(GIRTH, Length.ofMm(-1), GIRTH))
                .hasMessageContaining("seam");
        assertThatThrownBy(() -> FastenerCount.of(GIRTH, Length.ZERO, Pieces.of(4)))
                .hasMessageContaining("spacing");
        assertThatThrownBy(() -> FastenerCount.of(GIRTH, Length.ofMm(150), Pieces.ZERO))
                .hasMessageContaining("minimum");
    }
}
