package org.bandtrail.supplystock.reordering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Definition of G and G(-k) = G(k) + k: planetmath.org, unit normal loss function. The figures were computed
 * independently (SciPy); 2.42 stands in textbook tables as .0026, and 10 is the cancellation test of a published answer
 * by M. Maechler, where the direct formula gives 7.6946e-23 instead of 7.47456e-25.
 */
class UnitNormalLossTest {

    @ParameterizedTest
    @CsvSource({
        "0, .398942, 5e-7", ".10, .350935, 5e-7", ".25, .286345, 5e-7", ".50, .197797, 5e-7",
        ".75, .131167, 5e-7", ".84, .111962, 5e-7", "1.00, .0833155, 5e-8", "1.02, .0801904, 5e-8",
        "1.25, .0505869, 5e-8", "1.28, .0474985, 5e-8", "1.50, .0293068, 5e-8", "1.645, .0208856, 5e-8",
        "1.75, .0161738, 5e-8", "1.88, .0116420, 5e-8", "2.00, .00849070, 5e-9", "2.05, .00741848, 5e-9",
        "2.33, .00335232, 5e-9", "2.42, .00256090, 5e-9", "2.50, .00200414, 5e-9", "3.00, .000382154, 5e-10",
        "3.50, 5.84809e-5, 5e-11", "4.00, 7.14526e-6, 5e-12", "-1, 1.08332, 5e-6", "10, 7.47456e-25, 5e-31"
    })
    void every_printed_row_is_met_to_its_last_digit(double k, double loss, double halfOfTheLastDigit) {
        assertThat(UnitNormalLoss.of(k)).isCloseTo(loss, within(halfOfTheLastDigit));
    }

    @Test
    void the_textbook_row_of_four_digits_is_met() {
        assertThat(UnitNormalLoss.of(2.42)).isCloseTo(.0026, within(.00005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, .3, 1.999, 2.001, 5, 36.9})
    void the_mirror_law_holds(double k) {
        assertThat(UnitNormalLoss.of(-k)).isEqualTo(UnitNormalLoss.of(k) + k);
    }

    @Test
    void where_the_direct_form_hands_over_to_the_continued_fraction_there_is_no_step() {
        double below = UnitNormalLoss.of(2);
        double above = UnitNormalLoss.of(Math.nextUp(2.0));
        assertThat(above / below).isCloseTo(1, within(1e-13));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1000, -3, -.5, 0, .7, 1.9999, 2, 2.5, 6, 20, 36})
    void the_inverse_finds_the_level_again(double k) {
        assertThat(UnitNormalLoss.inverse(UnitNormalLoss.of(k))).isCloseTo(k, within(1e-9));
    }

    @Test
    void levels_and_losses_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> UnitNormalLoss.of(37.5))
                .hasMessage("Standardised level k [37.5] is out of range. Give -1000000000 to 37.");
        assertThatThrownBy(() -> UnitNormalLoss.of(Double.NaN)).hasMessageContaining("k [NaN]");
        assertThatThrownBy(() -> UnitNormalLoss.inverse(0)).hasMessageContaining("Unit normal loss G [0]");
    }
}
