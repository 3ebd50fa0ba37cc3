package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The clock moves when the test says so and never else. */
class FixedClockTest {
    private final FixedClock clock = FixedClock.at("2026-05-04T03:30:00Z");

    @Test
    void it_stands_still_until_it_is_moved() {
        assertThat(clock.instant()).isEqualTo(Instant.parse("2026-05-04T03:30:00Z"));
        assertThat(clock.advance(Duration.ofHours(2))).isEqualTo(Instant.parse("2026-05-04T05:30:00Z"));
        clock.advance(Duration.ofHours(-3));
        assertThat(clock.instant()).isEqualTo(Instant.parse("2026-05-04T02:30:00Z"));
        clock.set(Instant.EPOCH);
        assertThat(clock.millis()).isZero();
    }

    @Test
    void another_zone_reads_the_same_hands() {
        Clock west = clock.withZone(ZoneId.of("America/New_York"));

        assertThat(LocalDate.now(west)).isEqualTo("2026-05-03");
        assertThat(LocalDate.now(clock)).isEqualTo("2026-05-04");
        clock.advance(Duration.ofDays(1));
        assertThat(west.instant()).isEqualTo(clock.instant());
    }
}
