package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The units against published factors, written as published. */
class LengthUnitTest {

    /**
     * Source: NIST Special Publication 811 (2008 edition), appendix B.8, factors to metre, set in bold because exact.
     */
    @ParameterizedTest
    @CsvSource({"INCH, 2.54E-02", "FOOT, 3.048E-01", "YARD, 9.144E-01"})
    void customary_units_have_the_exact_factors_of_nist_sp_811(LengthUnit unit, BigDecimal metres) {
        assertThat(BigDecimal.valueOf(unit.micrometres(), 6)).isEqualByComparingTo(metres);
    }

    /** Source: SI prefixes, BIPM SI brochure, 9th edition, table 7: milli 10^-3, centi 10^-2. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 1E-3", "CENTIMETRE, 1E-2", "METRE, 1"})
    void metric_units_have_the_factors_of_their_prefixes(LengthUnit unit, BigDecimal metres) {
        assertThat(BigDecimal.valueOf(unit.micrometres(), 6)).isEqualByComparingTo(metres);
    }

    /** Source: NIST SP 811 B.6: US survey foot 1200/3937 m, 2 parts in a million longer; no length here is in it. */
    @Test
    void the_foot_is_the_international_one_and_not_the_survey_foot() {
        assertThat(LengthText.parse("1000000 ft")).isEqualTo(Length.ofMm(304_800_000));
        assertThat(1_000_000L * 1200 * 1000 / 3937).isEqualTo(304_800_609);
    }

    /** Source: UN/CEFACT Recommendation 20, common codes. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, MMT", "CENTIMETRE, CMT", "METRE, MTR", "INCH, INH", "FOOT, FOT", "YARD, YRD"})
    void units_have_their_recommendation_20_codes(LengthUnit unit, String code) {
        assertThat(unit.rec20()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({
        "mm, MILLIMETRE",
        "Centimeters, CENTIMETRE",
        "M, METRE",
        "metres, METRE",
        "inches, INCH",
        "'\"', INCH",
        "″, INCH",
        "FT, FOOT",
        "feet, FOOT",
        "′, FOOT",
        "’, FOOT",
        " yds , YARD"
    })
    void spellings_are_read_in_any_case(String spelling, LengthUnit unit) {
        assertThat(LengthUnit.spelt(spelling)).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ms", "mms", "feets", "rd", "ell", "\\"})
    void other_words_are_no_unit(String spelling) {
        assertThat(LengthUnit.spelt(spelling)).isNull();
    }
}
