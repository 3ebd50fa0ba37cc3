package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Counts that add up, with deficits. */
class PiecesTest {

    @Test
    void pieces_add_up() {
        assertThat(Pieces.of(144).minus(Pieces.of(150))).isEqualTo(Pieces.of(-6));
        assertThat(Pieces.of(-6).plus(Pieces.of(6))).isEqualTo(Pieces.ZERO);
        assertThat(Pieces.of(1).isPositive()).isTrue();
        assertThat(Pieces.ZERO.isPositive()).isFalse();
        assertThat(Pieces.of(2)).isGreaterThan(Pieces.of(-2));
    }

    @Test
    void a_count_beyond_the_range_is_refused_and_named() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Pieces.of(1_000_000_000_000L).plus(Pieces.of(1)))
                .withMessage("Count [1000000000001] is beyond 1000000000000 pieces. Check the number.");
        assertThatIllegalArgumentException().isThrownBy(() -> Pieces.of(-1_000_000_000_001L));
    }

    @Test
    void one_piece_is_one_piece() {
        assertThat(Pieces.of(1)).hasToString("1 piece");
        assertThat(Pieces.of(0)).hasToString("0 pieces");
        assertThat(Pieces.of(12)).hasToString("12 pieces");
    }
}
