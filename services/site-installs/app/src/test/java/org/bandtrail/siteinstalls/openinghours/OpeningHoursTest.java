package org.bandtrail.siteinstalls.openinghours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.bandtrail.siteinstalls.openinghours.OpeningHours.SingleDay;
import org.bandtrail.siteinstalls.openinghours.OpeningHours.Weekly;
import org.junit.jupiter.api.Test;

class OpeningHoursTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    private static final LocalTime EIGHT = LocalTime.of(8, 0);
    private static final LocalTime NOON = LocalTime.of(12, 0);
    private static final LocalTime FOUR = LocalTime.of(16, 0);
    private static final OpeningHours HOURS = new OpeningHours(
            List.of(new Weekly(DayOfWeek.MONDAY, LocalTime.of(13, 0), FOUR), new Weekly(DayOfWeek.MONDAY, EIGHT, NOON)),
            List.of(
                    new SingleDay(MONDAY.plusWeeks(1), null, null, "holiday"),
                    new SingleDay(MONDAY.plusWeeks(2), EIGHT, LocalTime.of(9, 0), "")));

    private static boolean open(LocalDateTime time) {
        return HOURS.at(time).open();
    }

    @Test
    void one_may_be_there_from_the_first_minute_and_must_have_left_at_the_last() {
        assertThat(open(MONDAY.atTime(7, 59))).isFalse();
        assertThat(open(MONDAY.atTime(8, 0))).isTrue();
        assertThat(open(MONDAY.atTime(12, 0))).isFalse();
        assertThat(open(MONDAY.atTime(13, 0))).isTrue();
        assertThat(open(MONDAY.atTime(16, 0))).isFalse();
        assertThat(HOURS.at(MONDAY.atTime(9, 0)).why())
                .isEqualTo("On Monday open from 08:00 to 12:00 and 13:00 to 16:00.");
        assertThat(HOURS.at(MONDAY.plusDays(1).atTime(9, 0)).why()).isEqualTo("Closed on Tuesday.");
    }

    @Test
    void a_single_day_replaces_the_rows_of_its_weekday() {
        assertThat(HOURS.at(MONDAY.plusWeeks(1).atTime(9, 0)).why()).isEqualTo("Closed on 2026-06-08 (holiday).");
        assertThat(open(MONDAY.plusWeeks(2).atTime(8, 30))).isTrue();
        assertThat(open(MONDAY.plusWeeks(2).atTime(9, 0))).isFalse();
    }

    @Test
    void no_rows_are_any_time() {
        assertThat(OpeningHours.ANY_TIME.at(MONDAY.atTime(3, 0)).open()).isTrue();
    }

    @Test
    void rows_that_contradict_themselves_are_refused_by_name() {
        assertThatThrownBy(() -> new Weekly(DayOfWeek.MONDAY, FOUR, EIGHT)).hasMessageContaining("Monday");
        assertThatThrownBy(() -> new SingleDay(MONDAY, EIGHT, null, "")).hasMessageContaining("one time");
        SingleDay closed = new SingleDay(MONDAY, null, null, "");
        assertThatThrownBy(() -> new OpeningHours(List.of(), List.of(closed, closed)))
                .hasMessageContaining("2026-06-01");
    }
}
