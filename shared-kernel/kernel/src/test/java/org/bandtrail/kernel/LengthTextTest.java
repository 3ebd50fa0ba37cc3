package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading and writing lengths. Expected millimetres follow from NIST SP 811: 1 in = 25.4 mm, 1 ft = 304.8 mm. */
class LengthTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1250 mm | 1250",
                "125cm | 1250",
                "1.25 m | 1250",
                "1,25 m | 1250",
                "0,125 m | 125",
                "12.3456 m | 12346",
                "10 in | 254",
                "5 yd | 4572",
                "4 ft 1 in | 1245",
                "5 ft 3 1/2 in | 1613",
                "5' 3 1/2\" | 1613",
                "5′3″ | 1600",
                "5’ 3” | 1600",
                "5' 3'' | 1600",
                "63\" | 1600",
                "1/2 in | 13",
                "1 m 25 cm 3 mm | 1253",
                "2 yd 1 ft 6 in | 2286",
                " 3 feet 2 inches  | 965",
                "0 mm | 0"
            })
    void what_people_write_is_read_exactly(String text, long mm) {
        assertThat(LengthText.parse(text)).isEqualTo(Length.ofMm(mm));
    }

    /** 5 in are 127 mm; halves of it, tenths of an inch and eighths fall between whole millimetres. */
    @ParameterizedTest
    @CsvSource({
        "0.4999 mm, 0",
        "0.5 mm, 1",
        "2.5 mm, 3",
        "3.5 mm, 4",
        "2.4999 mm, 2",
        "0.25 cm, 3",
        "2.5 in, 64",
        "1/16 in, 2",
        "1/64 in, 0",
        "1/3 ft, 102",
        "2 1/3 yd, 2134"
    })
    void the_result_is_rounded_once_half_up(String text, long mm) {
        assertThat(LengthText.parse(text)).isEqualTo(Length.ofMm(mm));
    }

    @Test
    void values_to_be_multiplied_are_read_in_micrometres() {
        assertThat(LengthText.micrometres("6 in", null)).isEqualTo(152_400);
        assertThat(LengthText.micrometres("1/3 in", null)).isEqualTo(8_466);
        assertThat(LengthText.micrometres("48.5", LengthUnit.CENTIMETRE)).isEqualTo(485_000);
    }

    @ParameterizedTest
    @CsvSource({
        "48, CENTIMETRE, 480",
        "48.5, CENTIMETRE, 485",
        "3 1/2, INCH, 89",
        "1250 mm, INCH, 1250",
        "12, FOOT, 3658"
    })
    void a_bare_number_takes_the_unit_of_its_column(String text, LengthUnit unit, long mm) {
        assertThat(LengthText.parse(text, unit)).isEqualTo(Length.ofMm(mm));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "12",
                "mm",
                "12 13 mm",
                "12 ells",
                "-5 mm",
                "+5 mm",
                "1e3 mm",
                "12345678 mm",
                "1.23456 m",
                "3 1/0 in",
                "1.5 1/2 in",
                "5 ft 3",
                "1 mm mm",
                "NaN m",
                "1.2.3 m"
            })
    void what_cannot_be_read_is_refused_with_its_text_and_what_to_write(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parse(text))
                .withMessage(
                        "Length [%s] cannot be read. Write number and unit: 1250 mm, 1.25 m, 4 ft 1 1/4 in or 3 yd.",
                        text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3 in 5 ft", "3 m 3 m", "5.5 ft 3 in", "1/2 ft 3 in"})
    void units_out_of_order_and_broken_numbers_before_the_last_are_slips_of_the_pen(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parse(text))
                .withMessageContaining("[" + text + "]");
    }

    /** Pages show 3950 mm as "3,950 mm"; who types that back must not get four millimetres. */
    @ParameterizedTest
    @ValueSource(strings = {"3,950 mm", "12,345 mm", "1,250 m", "5 ft 1,250 in"})
    void a_comma_before_three_digits_is_refused_because_it_has_two_meanings(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.parse(text))
                .withMessageContaining("[" + text + "] has two meanings");
    }

    @Test
    void a_bare_number_is_refused_even_with_a_comma_of_two_meanings() {
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.parse("3,950", LengthUnit.MILLIMETRE));
        assertThatIllegalArgumentException().isThrownBy(() -> LengthText.parse("5 ft 3", LengthUnit.CENTIMETRE));
    }

    @ParameterizedTest
    @CsvSource({"12345, 12.345 m", "5, 0.005 m", "0, 0.000 m", "-1250, -1.250 m", "100000, 100.000 m"})
    void metres_keep_their_millimetres(long mm, String text) {
        assertThat(LengthText.metres(Length.ofMm(mm))).isEqualTo(text);
    }

    /** An eighth of an inch is 3.175 mm. */
    @ParameterizedTest
    @CsvSource({
        "0, 0 in",
        "1, 0 in",
        "-1, 0 in",
        "2, 1/8 in",
        "3, 1/8 in",
        "13, 1/2 in",
        "19, 3/4 in",
        "25, 1 in",
        "254, 10 in",
        "305, 1 ft 0 in",
        "1248, 4 ft 1 1/8 in",
        "1613, 5 ft 3 1/2 in",
        "-305, -1 ft 0 in",
        "914, 3 ft 0 in"
    })
    void feet_and_inches_are_given_to_the_nearest_eighth(long mm, String text) {
        assertThat(LengthText.feetAndInches(Length.ofMm(mm))).isEqualTo(text);
    }

    /** Seed 1, ten thousand lengths up to 10 km. */
    @Test
    void what_is_written_is_read_back_as_near_as_it_was_written() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            Length length = Length.ofMm(random.nextLong(10_000_000));

            assertThat(LengthText.parse(LengthText.metres(length))).isEqualTo(length);
            assertThat(LengthText.parse(LengthText.feetAndInches(length))
                            .minus(length)
                            .mm())
                    .isBetween(-2L, 2L);
        }
    }
}
