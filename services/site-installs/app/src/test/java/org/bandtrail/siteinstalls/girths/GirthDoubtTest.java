package org.bandtrail.siteinstalls.girths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bandtrail.kernel.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GirthDoubtTest {
    private static final GirthLimits LIMITS = new GirthLimits(Length.ofMm(479), Length.ofMm(6000), 250);

    // girth = pi x DBH; 1 in = 25.4 mm exactly (NIST SP 811 B.8). 6 in = 152.4 mm -> 478.78; 10.7 cm -> 336.15.
    @ParameterizedTest
    @CsvSource({"6 in,479", "10.7 cm,336", "53.3 cm,1674", "1 cm,31", "82.5 cm,2592", "1 ft,958"})
    void a_girth_is_pi_times_the_diameter_rounded_to_the_millimetre(String diameter, long girthMm) {
        assertThat(WrittenGirth.ofDiameter(diameter).girth()).isEqualTo(Length.ofMm(girthMm));
    }

    @Test
    void feet_typed_for_inches_are_doubted_and_the_inches_named() {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth("78 ft"), null, LIMITS))
                .hasValueSatisfying(doubt -> {
                    assertThat(doubt.kind()).isEqualTo(GirthDoubt.Kind.IMPLAUSIBLE);
                    assertThat(doubt.value()).isEqualTo("78 ft");
                    assertThat(doubt.perhaps()).isEqualTo("78 in as girth");
                    assertThat(doubt.message()).contains("78 ft").contains("Perhaps it is 78 in");
                });
    }

    // Each slip against a tree known to have 1.981 m (78 in; 63.1 cm of diameter) of girth.
    @ParameterizedTest
    @CsvSource({
        "78 ft,GIRTH,78 in as girth",
        "78 cm,GIRTH,78 in as girth",
        "198 in,GIRTH,198 cm as girth",
        "1981 cm,GIRTH,1981 mm as girth",
        "198 mm,GIRTH,198 cm as girth",
        "63.1 cm,GIRTH,63.1 cm as diameter",
        "1.98 m,DIAMETER,1.98 m as girth"
    })
    void a_slip_is_told_from_the_girth_known_before(String text, GirthBasis basis, String perhaps) {
        Length known = Length.ofMm(1981);
        assertThat(GirthDoubt.about(new WrittenGirth(text, basis), known, LIMITS))
                .hasValueSatisfying(doubt -> assertThat(doubt.perhaps()).isEqualTo(perhaps));
    }

    @ParameterizedTest
    @CsvSource({"750 mm,false", "749 mm,true", "1250 mm,false", "1251 mm,true"})
    void a_change_of_a_quarter_is_believed_and_a_millimetre_more_is_not(String text, boolean doubted) {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth(text), Length.ofMm(1000), LIMITS)
                        .isPresent())
                .isEqualTo(doubted);
    }

    @ParameterizedTest
    @CsvSource({"478 mm,BELOW_MINIMUM", "6001 mm,IMPLAUSIBLE"})
    void a_girth_just_outside_the_limits_is_doubted(String text, GirthDoubt.Kind kind) {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth(text), null, LIMITS))
                .hasValueSatisfying(doubt -> assertThat(doubt.kind()).isEqualTo(kind));
    }

    @ParameterizedTest
    @CsvSource({"479 mm", "6000 mm"})
    void a_girth_at_the_limits_is_believed(String text) {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth(text), null, LIMITS)).isEmpty();
    }

    @Test
    void a_thin_girth_that_may_be_a_diameter_is_asked_as_one() {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth("39 cm"), null, LIMITS))
                .hasValueSatisfying(doubt -> assertThat(doubt.perhaps()).isEqualTo("39 cm as diameter"));
    }

    @Test
    void a_doubt_without_a_better_reading_asks_to_measure_again() {
        assertThat(GirthDoubt.about(WrittenGirth.ofGirth("1500 mm"), Length.ofMm(1000), LIMITS))
                .hasValueSatisfying(doubt -> {
                    assertThat(doubt.perhaps()).isNull();
                    assertThat(doubt.message()).endsWith("Measure once more, or confirm it.");
                });
    }

    @Test
    void what_is_no_size_of_a_trunk_is_refused_by_name() {
        assertThatThrownBy(() -> WrittenGirth.ofGirth("0 cm"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0 cm]");
        assertThatThrownBy(() -> WrittenGirth.ofDiameter("40 m"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[40 m]");
        assertThatThrownBy(() -> WrittenGirth.ofGirth("12"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[12]");
    }

    @Test
    void limits_that_nothing_fits_between_are_refused() {
        assertThatThrownBy(() -> new GirthLimits(Length.ofMm(500), Length.ofMm(500), 250))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GirthLimits(Length.ofMm(500), Length.ofMm(501), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
