package org.bandtrail.supplystock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CheckDigitTest {

    /** Numbers from the GS1 documents named in check-values F1, from memory, recomputed by hand with weights 3 and 1. */
    @Test
    void published_numbers_end_in_their_check_digit() {
        assertThat(CheckDigit.of("400638133393")).isEqualTo(1);
        assertThat(CheckDigit.of("1061414107346")).isEqualTo(4);
        assertThat(CheckDigit.fits("4006381333931")).isTrue();
        assertThat(CheckDigit.fits("10614141073464")).isTrue();
    }

    @Test
    void any_single_wrong_digit_is_found() {
        String number = "4006381333931";
        for (int place = 0; place < number.length(); place++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                if (digit != number.charAt(place)) {
                    String wrong = number.substring(0, place) + digit + number.substring(place + 1);
                    assertThat(CheckDigit.fits(wrong)).as(wrong).isFalse();
                }
            }
        }
    }

    @Test
    void what_is_no_number_is_refused_by_name() {
        assertThatThrownBy(() -> CheckDigit.of("40063813x339"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[40063813x339]");
        assertThat(CheckDigit.fits("123")).isFalse();
    }
}
