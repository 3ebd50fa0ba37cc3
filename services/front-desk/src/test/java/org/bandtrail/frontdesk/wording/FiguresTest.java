package org.bandtrail.frontdesk.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.bandtrail.kernel.LengthText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures, days and CSV as people and spreadsheets see them. */
class FiguresTest {
    private static final Figures SI = new Figures(Units.SI);
    private static final Figures US = new Figures(Units.US);

    /** NIST SP 811 (2008), appendix B.8: 1 ft = 0.3048 m, 1 yd = 0.9144 m, 1 in = 25.4 mm, exactly. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "45720   | 45.72 m    | 150.0 ft",
                "304800  | 304.80 m   | 1,000.0 ft",
                "1234567 | 1,234.57 m | 4,050.4 ft",
                "-3950   | -3.95 m    | -13.0 ft",
                "0       | 0.00 m     | 0.0 ft",
            })
    void long_lengths_read_in_metres_or_feet(long mm, String metric, String imperial) {
        assertThat(SI.run(mm)).isEqualTo(metric);
        assertThat(US.run(mm)).isEqualTo(imperial);
    }

    @Test
    void short_lengths_read_in_millimetres_or_feet_and_inches() {
        assertThat(SI.piece(1350L)).isEqualTo("1,350 mm");
        assertThat(US.piece(1219L)).isEqualTo("4 ft 0 in");
        assertThat(US.piece(254L)).isEqualTo("10 in");
        assertThat(SI.stored(1350L)).isEqualTo("1,350 mm stored");
    }

    @Test
    void what_is_not_known_is_a_dash_and_never_a_zero() {
        assertThat(SI.run(null)).isEqualTo("–");
        assertThat(US.piece(null)).isEqualTo("–");
        assertThat(SI.pieces(null)).isEqualTo("–");
        assertThat(SI.money(null)).isEqualTo("–");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 479, 1000, 1234, 1350, 2999, 10_001})
    void a_length_typed_back_as_it_was_shown_is_the_same_millimetre(long mm) {
        for (Figures figures : List.of(SI, US)) {
            String typed = figures.typed(mm) + " " + figures.units().small();
            assertThat(LengthText.parse(typed).mm()).as(typed).isEqualTo(mm);
        }
    }

    @Test
    void money_shows_the_minor_digits_of_its_currency_as_iso_4217_says() {
        assertThat(SI.money(123_456L, "USD")).isEqualTo("USD 1,234.56");
        assertThat(SI.money(500L, "JPY")).isEqualTo("JPY 500");
        assertThat(SI.money(1_500L, "KWD")).isEqualTo("KWD 1.500");
        assertThat(SI.quantity(812_350, "USD minor units")).isEqualTo("USD 8,123.50");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-06-12T14:00:00Z | today       | today 10:00",
                "2026-06-11T23:00:00Z | yesterday   | yesterday 19:00",
                "2026-06-13T14:00:00Z | tomorrow    | tomorrow",
                "2026-06-09T14:00:00Z | last Tuesday | last Tuesday",
                "2026-06-16T14:00:00Z | on Tuesday  | on Tuesday",
                "2026-05-04T14:00:00Z | 4 May       | 4 May",
                "2025-05-04T14:00:00Z | 4 May 2025  | 4 May 2025",
                "2026-06-12T03:00:00Z | yesterday   | yesterday 23:00",
            })
    void days_are_words_near_today_in_the_zone_of_the_yards(Instant instant, String day, String moment) {
        Days days = new Days(
                Clock.fixed(Instant.parse("2026-06-12T18:00:00Z"), ZoneId.of("UTC")), ZoneId.of("America/New_York"));

        assertThat(days.day(instant)).isEqualTo(day);
        assertThat(days.moment(instant)).isEqualTo(moment);
    }
}
