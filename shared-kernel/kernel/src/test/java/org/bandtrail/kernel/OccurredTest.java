package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The two times of a fact are kept as given, even when a telephone's clock was wrong. */
class OccurredTest {
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @Test
    void the_delay_is_how_long_the_books_were_behind() {
        assertThat(Occurred.at(NOON).delay()).isZero();
        assertThat(new Occurred(NOON, NOON.plusSeconds(7_200)).delay()).isEqualTo(Duration.ofHours(2));
        assertThat(new Occurred(NOON, NOON.minusSeconds(60)).delay()).isEqualTo(Duration.ofMinutes(-1));
    }

    @Test
    @SuppressWarnings("NullAway") // A request may lack a time; that is what is tested.
    void a_fact_without_a_time_is_refused_and_the_time_named() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Occurred(null, NOON))
                .withMessageContaining("The time it happened is missing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Occurred(NOON, null))
                .withMessageContaining("The time it was recorded is missing");
    }
}
