package org.bandtrail.supplystock.suppliers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bandtrail.kernel.MaterialKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackingTest {

    /** Exact by NIST Special Publication 811 (2008), appendix B.8: 1 yd = 0.9144 m, 1 ft = 0.3048 m. */
    @ParameterizedTest
    @CsvSource({
        "METRE, 120, 120000",
        "YARD, 55, 50292",
        "YARD, 10, 9144",
        "FOOT, 100, 30480",
        "FOOT, 5, 1524",
    })
    void lengths_convert_exactly(OrderUnit unit, long units, long mm) {
        assertThat(Packing.of(MaterialKind.TAPE, unit, "").base(MaterialKind.TAPE, units))
                .isEqualTo(mm);
    }

    @Test
    void only_the_sum_of_a_line_is_cut_to_the_millimetre_never_each_unit() {
        Packing reel = Packing.of(MaterialKind.TAPE, OrderUnit.REEL, "36 yd");
        assertThat(reel.content()).isEqualTo(32_918_400);
        assertThat(reel.base(MaterialKind.TAPE, 1)).isEqualTo(32_918);
        assertThat(reel.base(MaterialKind.TAPE, 10)).isEqualTo(329_184);
        assertThat(Packing.of(MaterialKind.TAPE, OrderUnit.YARD, "").base(MaterialKind.TAPE, 5_000))
                .isEqualTo(4_572_000);
    }

    @Test
    void a_box_holds_what_is_written_on_it() {
        assertThat(Packing.of(MaterialKind.MESH, OrderUnit.BOX, "12 x 50 m").base(MaterialKind.MESH, 3))
                .isEqualTo(1_800_000);
        assertThat(Packing.of(MaterialKind.FASTENER, OrderUnit.BOX, "10 x 100").base(MaterialKind.FASTENER, 3))
                .isEqualTo(3_000);
        assertThat(Packing.of(MaterialKind.FASTENER, OrderUnit.PACK, "100 pieces")
                        .content())
                .isEqualTo(100);
        assertThat(Packing.of(MaterialKind.TAPE, OrderUnit.REEL, "45,72 m").content())
                .isEqualTo(45_720_000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "FASTENER | METRE | ''      | cannot be bought by the metre",
                "TAPE     | PIECE | ''      | cannot be bought by the piece",
                "TAPE     | REEL  | ''      | cannot be read from []",
                "TAPE     | REEL  | 55      | cannot be read from [55]",
                "TAPE     | REEL  | 55 elle | cannot be read from [55 elle]",
                "TAPE     | REEL  | 0 m     | holds [0]",
                "FASTENER | PACK  | 5 m     | cannot be read from [5 m]",
            })
    void what_does_not_fit_is_refused_by_name(MaterialKind kind, OrderUnit unit, String content, String words) {
        assertThatThrownBy(() -> Packing.of(kind, unit, content))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }

    @Test
    void a_number_beyond_any_depot_is_refused_and_does_not_wrap_round() {
        Packing yard = Packing.of(MaterialKind.TAPE, OrderUnit.YARD, "");
        assertThatThrownBy(() -> yard.base(MaterialKind.TAPE, Long.MAX_VALUE))
                .hasMessageContaining("[" + Long.MAX_VALUE + "] yards");
    }

    /** 0.84 for a metre; 12,345 mm cost 10.3698, so 10.37. Reckoned by hand. */
    @Test
    void a_length_is_priced_once_and_rounded_half_up() {
        Packing metre = Packing.of(MaterialKind.MESH, OrderUnit.METRE, "");
        assertThat(metre.priceOf(MaterialKind.MESH, 12_345, 84)).isEqualTo(1_037);
        assertThat(metre.priceOf(MaterialKind.MESH, 500, 1)).isEqualTo(1);
        assertThat(metre.priceOf(MaterialKind.MESH, 499, 1)).isZero();
    }
}
