package org.bandtrail.supplystock.suppliers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes by UN/CEFACT Recommendation 20, Rev. 17 (2021), and Recommendation 21 for types of package. */
class OrderUnitTest {

    @ParameterizedTest
    @EnumSource(OrderUnit.class)
    void every_unit_reads_back_from_its_own_codes(OrderUnit unit) {
        assertThat(OrderUnit.onWire(unit.rec20(), unit.rec21())).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource({
        "MTR, METRE",
        "YRD, YARD",
        "FOT, FOOT",
        "H87, PIECE",
        "C62, PIECE",
        "EA, PIECE",
        "mtr, METRE",
        "XRL, REEL"
    })
    void codes_are_those_of_the_recommendation(String code, OrderUnit unit) {
        assertThat(OrderUnit.onWire(code, null)).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"BX", "RO", "RL", "PK", "BG", "CT"})
    void a_type_of_package_is_no_unit(String code) {
        assertThatThrownBy(() -> OrderUnit.onWire(code, null))
                .hasMessageContaining("[" + code + "]")
                .hasMessageContaining("C62 with package code");
    }

    @Test
    void kt_is_a_tub_and_no_kit_and_what_nobody_knows_is_said() {
        assertThatThrownBy(() -> OrderUnit.onWire("KT", null)).hasMessageContaining("tub, barrel or pail");
        assertThatThrownBy(() -> OrderUnit.onWire("MTK", null)).hasMessageContaining("[MTK]");
        assertThatThrownBy(() -> OrderUnit.onWire("C62", "CT")).hasMessageContaining("[CT]");
        assertThatThrownBy(() -> OrderUnit.onWire("MTR", "RL")).hasMessageContaining("[MTR]");
    }
}
