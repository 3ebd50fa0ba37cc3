package org.bandtrail.inspections.duebands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DueTest {
    private static final Instant FITTED = Instant.parse("2026-05-01T08:00:00Z");
    private static final Instant VISITED = FITTED.plus(2, ChronoUnit.DAYS);
    private static final VisitPolicy POLICY = policy(3);

    private static VisitPolicy policy(int intervalDays) {
        return new VisitPolicy(
                1, LocalDate.of(2026, 1, 1), intervalDays, 50, 1, 90, 0, 1, 120, 24, "common practice", "test");
    }

    private static Due due(Answer answer, @Nullable Integer load, @Nullable GuardState guard, boolean bycatchOpen) {
        Instant read = answer == Answer.READ ? VISITED : null;
        return Objects.requireNonNull(
                Due.of(new BandStanding(FITTED, read, VISITED, answer, load, guard, bycatchOpen), POLICY));
    }

    @Test
    void a_band_never_visited_is_due_one_interval_after_it_was_fitted() {
        Due due = Objects.requireNonNull(Due.of(new BandStanding(FITTED, null, null, null, null, null, false), POLICY));

        assertThat(due.at()).isEqualTo(FITTED.plus(3, ChronoUnit.DAYS));
        assertThat(due.reason()).isEqualTo(DueReason.INTERVAL);
    }

    @Test
    void a_band_that_was_read_is_due_one_interval_later() {
        Due due = due(Answer.READ, 49, GuardState.SOUND, false);

        assertThat(due.at()).isEqualTo(VISITED.plus(3, ChronoUnit.DAYS));
        assertThat(due.reason()).isEqualTo(DueReason.INTERVAL);
    }

    @Test
    void from_the_load_the_policy_names_the_next_look_comes_sooner() {
        Due due = due(Answer.READ, 50, GuardState.SOUND, false);

        assertThat(due.at()).isEqualTo(VISITED.plus(1, ChronoUnit.DAYS));
        assertThat(due.reason()).isEqualTo(DueReason.LOAD);
        assertThat(due.sentence()).contains("50 percent");
    }

    @Test
    void a_failed_guard_is_due_at_once_and_says_how_it_was_found() {
        for (GuardState failed : new GuardState[] {GuardState.GAP, GuardState.MISSING, GuardState.TOUCHING}) {
            Due due = due(Answer.READ, 0, failed, false);

            assertThat(due.at()).isEqualTo(VISITED);
            assertThat(due.reason()).isEqualTo(DueReason.GUARD);
        }
    }

    @Test
    void an_animal_without_an_outcome_comes_before_everything_else() {
        assertThat(due(Answer.READ, 100, GuardState.GAP, true).reason()).isEqualTo(DueReason.BYCATCH);
    }

    @Test
    void not_found_not_read_and_missing_are_tried_again_and_are_no_reading() {
        for (Answer answer : new Answer[] {Answer.NOT_FOUND, Answer.NOT_READ, Answer.BAND_MISSING}) {
            Due due = due(answer, null, null, false);

            assertThat(due.at()).isEqualTo(VISITED.plus(1, ChronoUnit.DAYS));
            assertThat(due.sentence()).contains(answer.spelt());
        }
    }

    @Test
    void a_band_has_to_come_off_in_time_even_if_it_was_read_yesterday() {
        Instant read = FITTED.plus(119, ChronoUnit.DAYS);

        Due due = Objects.requireNonNull(
                Due.of(new BandStanding(FITTED, read, read, Answer.READ, 0, null, false), POLICY));

        assertThat(due.reason()).isEqualTo(DueReason.MUST_REMOVE);
        assertThat(due.at()).isEqualTo(FITTED.plus(120, ChronoUnit.DAYS));
    }

    @Test
    void nothing_known_is_nothing_due() {
        assertThat(Due.of(new BandStanding(null, null, null, null, null, null, false), POLICY))
                .isNull();
    }

    @Test
    void an_interval_longer_than_two_weeks_is_refused() {
        assertThat(policy(14).intervalDays()).isEqualTo(14);
        assertThatThrownBy(() -> policy(15)).hasMessageContaining("intervalDays [15]");
    }
}
