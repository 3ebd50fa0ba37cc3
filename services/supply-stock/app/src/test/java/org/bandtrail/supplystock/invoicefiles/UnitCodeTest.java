package org.bandtrail.supplystock.invoicefiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversion factors: UN/CEFACT Recommendation 20, revision 17; datasets/unece-units-of-measure, commit f6427eb. */
class UnitCodeTest {

    @ParameterizedTest
    @CsvSource({
        "12.5, MTR, 12500",
        "125, CMT, 1250",
        "7, MMT, 7",
        "10, INH, 254",
        "100, FOT, 30480",
        "50, YRD, 45720",
        "0.5, FOT, 152",
        "-3, MTR, -3000",
        "1, fot, 305"
    })
    void lengths_become_whole_millimetres(String quantity, String code, long millimetres) {
        assertThat(books(quantity, code, Measure.MILLIMETRES, null)).isEqualTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({"5, C62, 5", "5, EA, 5", "5, H87, 5", "2.5, DZN, 30", "4, PR, 8"})
    void counts_become_whole_pieces(String quantity, String code, long pieces) {
        assertThat(books(quantity, code, Measure.PIECES, null)).isEqualTo(pieces);
    }

    @Test
    void a_package_holds_what_the_quote_says_and_nothing_otherwise() {
        assertThat(books("3", "XBX", Measure.PIECES, 1_440L)).isEqualTo(4_320);
        assertThat(books("8", "XRL", Measure.MILLIMETRES, 45_720L)).isEqualTo(365_760);
        assertThat(books("8", "EA", Measure.MILLIMETRES, 45_720L)).isEqualTo(365_760);
        assertThat(books("2", "SET", Measure.PIECES, 25L)).isEqualTo(50);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> books("3", "XPK", Measure.PIECES, null))
                .withMessage("Unit [XPK] is a package whose content no quote of the supplier says."
                        + " Enter the pack size of the quote first.");
    }

    @ParameterizedTest
    @CsvSource({"BX, XBX", "RO, XRO", "RL, XRL", "PK, XPK", "KT, SET"})
    void codes_that_were_deleted_or_mean_something_else_are_refused_with_the_right_one(String code, String right) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> books("1", code, Measure.PIECES, 100L))
                .withMessageStartingWith("Unit [%s] ".formatted(code))
                .withMessageContaining(right);
    }

    @Test
    void a_length_is_no_count_and_a_broken_piece_is_none() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> books("5", "MTR", Measure.PIECES, null))
                .withMessage("Unit [MTR] does not give pieces. Use C62, DZN or XBX.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> books("0.4", "DZN", Measure.PIECES, null))
                .withMessage("[0.4 DZN] is no whole number of pieces.");
    }

    private static long books(String quantity, String code, Measure measure, @Nullable Long content) {
        return UnitCode.toBooks(new BigDecimal(quantity), code, measure, content);
    }
}
