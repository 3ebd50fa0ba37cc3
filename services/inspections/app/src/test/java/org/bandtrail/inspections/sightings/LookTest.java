package org.bandtrail.inspections.sightings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LookTest {
    private static Look look(Answer answer, @Nullable Integer saturation, Map<LifeStage, Long> catches) {
        return new Look(answer, saturation, catches, null, null);
    }

    private static Bycatch animal(@Nullable Boolean alive, @Nullable String action, @Nullable String outcome) {
        return new Bycatch(true, null, "wren", alive, action, null, null, outcome, null, false);
    }

    @Test
    void the_four_answers_are_four_words() {
        assertThat(Answer.of("read")).isEqualTo(Answer.READ);
        assertThat(Answer.of("not-found")).isEqualTo(Answer.NOT_FOUND);
        assertThat(Answer.of("not-read")).isEqualTo(Answer.NOT_READ);
        assertThat(Answer.of("Band-Missing ")).isEqualTo(Answer.BAND_MISSING);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Answer.of("zero"))
                .withMessageContaining("read, not-found, not-read, band-missing");
    }

    @Test
    void nothing_counted_on_a_read_band_is_a_true_zero_and_no_contradiction() {
        assertThat(look(Answer.READ, 10, Map.of()).catchTotal()).isZero();
        assertThat(look(Answer.NOT_READ, null, Map.of()).contradictsItself()).isFalse();
        assertThat(look(Answer.NOT_READ, null, Map.of(LifeStage.ADULT, 1L)).contradictsItself())
                .isTrue();
    }

    @Test
    void saturation_is_a_percentage_and_a_catch_is_a_count() {
        assertThat(look(Answer.READ, 100, Map.of()).saturationPercent()).isEqualTo(100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> look(Answer.READ, 101, Map.of()))
                .withMessageContaining("101");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> look(Answer.READ, null, Map.of(LifeStage.INSTAR_2, -1L)))
                .withMessageContaining("instar-2");
    }

    @Test
    void a_band_whose_saturation_nobody_judged_is_no_lower_bound() {
        assertThat(look(Answer.READ, null, Map.of(LifeStage.ADULT, 70L)).lowerBound(90))
                .isFalse();
    }

    @Test
    void an_animal_is_open_until_its_outcome_is_known_or_it_was_dead_and_dealt_with() {
        assertThat(animal(true, "boxed", null).open()).isTrue();
        assertThat(animal(true, "boxed", "released").open()).isFalse();
        assertThat(animal(false, null, null).open()).isTrue();
        assertThat(animal(false, "buried", null).open()).isFalse();
        assertThat(Bycatch.NONE.open()).isFalse();
    }

    @Test
    void only_a_sound_guard_keeps_wildlife_off() {
        assertThat(GuardState.values()).filteredOn(guard -> !guard.failed()).containsExactly(GuardState.SOUND);
    }
}
