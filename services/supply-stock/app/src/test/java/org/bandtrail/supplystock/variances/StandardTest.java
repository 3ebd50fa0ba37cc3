package org.bandtrail.supplystock.variances;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.bandtrail.kernel.MaterialKind;
import org.junit.jupiter.api.Test;

/** Worked example: check values, section E3, from memory there and its arithmetic verified. */
class StandardTest {
    private static final long METRE_MICROMETRES = 1_000_000;

    @Test
    void fifty_rolls_at_12_40_against_12_00_are_20_00_unfavourable() {
        Standard roll = new Standard(MaterialKind.TAPE, 50 * METRE_MICROMETRES, 12_00);

        assertThat(roll.priceVariance(50 * 12_40, 50 * 50_000)).isEqualTo(20_00);
    }

    @Test
    void a_thousand_and_forty_metres_against_a_thousand_at_0_24_are_9_60_unfavourable() {
        Standard metre = new Standard(MaterialKind.TAPE, METRE_MICROMETRES, 24);

        assertThat(metre.usageVariance(1_040_000, 1_000_000)).isEqualTo(9_60);
        assertThat(metre.usageVariance(1_000_000, 1_040_000)).as("favourable").isEqualTo(-9_60);
    }

    @Test
    void a_credited_line_takes_its_variance_back_and_fasteners_count_pieces() {
        Standard pack = new Standard(MaterialKind.FASTENER, 100, 4_50);

        assertThat(pack.cost(520)).as("5.2 packs, computed by hand").isEqualTo(23_40);
        assertThat(pack.priceVariance(24_00, 520) + pack.priceVariance(-24_00, -520))
                .isZero();
    }

    @Test
    void what_is_no_price_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Standard(MaterialKind.TAPE, 0, 1))
                .withMessageContaining("[0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Standard(MaterialKind.TAPE, 1, -1))
                .withMessageContaining("[-1]");
    }
}
