package org.bandtrail.supplystock.discrepancies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;

class WaitingTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-05-04");

    @Test
    void a_question_waits_until_a_day_ahead_and_may_wait_again() {
        Waiting waiting = Waiting.UNKNOWN;
        for (int days : new int[] {1, 14, Waiting.LONGEST_DAYS}) {
            for (WaitingEvent event : waiting.decide(wait(TODAY.plusDays(days), "the truck is back then"))) {
                waiting = waiting.evolve(event);
            }
            assertThat(waiting.until()).isEqualTo(TODAY.plusDays(days));
        }
    }

    @Test
    void today_and_a_day_too_far_ahead_are_refused() {
        assertThatExceptionOfType(WaitingRefused.DayUnfit.class)
                .isThrownBy(() -> Waiting.UNKNOWN.decide(wait(TODAY, "why")));
        assertThatExceptionOfType(WaitingRefused.DayUnfit.class)
                .isThrownBy(() -> Waiting.UNKNOWN.decide(wait(TODAY.plusDays(Waiting.LONGEST_DAYS + 1), "why")));
    }

    @Test
    void waiting_needs_a_reason() {
        assertThatExceptionOfType(WaitingRefused.WaitingWithoutReason.class)
                .isThrownBy(() -> Waiting.UNKNOWN.decide(wait(TODAY.plusDays(1), " ")));
    }

    private static WaitingCommand wait(LocalDate until, String reason) {
        Place place = Place.missing(new PersonId("P-07"));
        return new WaitingCommand.Wait(
                Waiting.question("reel", "R-1", place),
                "reel",
                "R-1",
                place,
                3_950,
                until,
                reason,
                new PersonId("P-01"),
                Occurred.at(Instant.parse("2026-05-04T08:00:00Z")));
    }
}
