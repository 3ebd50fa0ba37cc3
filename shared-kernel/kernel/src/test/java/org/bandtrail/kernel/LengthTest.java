package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Whole millimetres that add up, with deficits, within a range no programme leaves. */
class LengthTest {
    private static final long LIMIT = 10_000_000_000_000L;

    @Test
    void lengths_add_up_to_the_millimetre() {
        Length reel = Length.parse("25 m");
        Length used = Length.parse("4 ft 1 in");

        assertThat(reel.minus(used).plus(used)).isEqualTo(reel);
        assertThat(used.times(20)).isEqualTo(Length.ofMm(24_900));
        assertThat(reel.minus(used.times(21))).isEqualTo(Length.ofMm(-1_145));
        assertThat(Length.ofMm(-7).negated()).isEqualTo(Length.ofMm(7));
    }

    @Test
    void a_deficit_is_a_length_below_nothing() {
        assertThat(Length.ofMm(-1).isNegative()).isTrue();
        assertThat(Length.ZERO.isNegative()).isFalse();
        assertThat(Length.ZERO.isZero()).isTrue();
        assertThat(Length.ZERO.isPositive()).isFalse();
        assertThat(Length.ofMm(1).isPositive()).isTrue();
    }

    @Test
    void lengths_are_ordered() {
        Length shorter = Length.ofMm(-3);
        Length longer = Length.ofMm(2);

        assertThat(shorter).isLessThan(longer);
        assertThat(shorter.min(longer)).isEqualTo(longer.min(shorter)).isEqualTo(shorter);
        assertThat(shorter.max(longer)).isEqualTo(longer.max(shorter)).isEqualTo(longer);
    }

    @Test
    void a_length_beyond_the_range_is_refused_and_named() {
        assertThat(Length.ofMm(LIMIT).negated()).isEqualTo(Length.ofMm(-LIMIT));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofMm(LIMIT + 1))
                .withMessage("Length [10000000000001 mm] is beyond 10000000000000 mm. Check the unit.");
        assertThatIllegalArgumentException().isThrownBy(() -> Length.ofMm(Long.MIN_VALUE));
        assertThatIllegalArgumentException().isThrownBy(() -> Length.ofMm(LIMIT).plus(Length.ofMm(1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofMm(LIMIT).times(Long.MAX_VALUE))
                .withMessageContaining("[10000000000000 mm] times [9223372036854775807]");
    }

    @Test
    void a_length_reads_as_metres_in_messages() {
        assertThat(Length.ofMm(12_345)).hasToString("12.345 m");
    }
}
