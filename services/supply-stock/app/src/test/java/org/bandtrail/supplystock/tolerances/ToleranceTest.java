package org.bandtrail.supplystock.tolerances;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class ToleranceTest {
    private static final Tolerances POLICY = new Tolerances(5, 100, 5, 20, 5_00, 1_000_00);

    @Test
    void of_share_and_limit_the_smaller_holds_and_a_share_is_rounded_down() {
        assertThat(POLICY.allowedMm(45_720)).isEqualTo(100);
        assertThat(POLICY.allowedMm(19_999))
                .as("5 per mille of 19,999 is 99.995")
                .isEqualTo(99);
        assertThat(POLICY.allowedPieces(1_440)).isEqualTo(5);
        assertThat(POLICY.allowedPieces(999)).isEqualTo(4);
        assertThat(POLICY.allowedMinor(100_00)).isEqualTo(2_00);
        assertThat(POLICY.allowedMinor(-400_00)).isEqualTo(5_00);
    }

    @Test
    void what_is_no_tolerance_is_refused_by_value() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Tolerances(1_001, 0, 0, 0, 0, 0))
                .withMessageContaining("[1001]");
        assertThatIllegalArgumentException().isThrownBy(() -> new Tolerances(0, -1, 0, 0, 0, 0));
        assertThat(new Tolerances(1_000, 0, 0, 1_000, 0, 0)).isNotEqualTo(Tolerances.NONE);
    }

    @Test
    void a_policy_needs_source_and_reason_and_the_same_one_again_changes_nothing() {
        assertThatExceptionOfType(ToleranceRefused.ToleranceWithoutReason.class)
                .isThrownBy(() -> Tolerance.UNKNOWN.decide(set(" ", "agreed")));
        Tolerance set = Tolerance.UNKNOWN.evolve(
                Tolerance.UNKNOWN.decide(set("rule of the programme", "agreed")).getFirst());

        assertThat(set.now()).isEqualTo(POLICY);
        assertThat(set.decide(set("rule of the programme", "agreed"))).isEmpty();
    }

    private static ToleranceCommand set(String source, String reason) {
        return new ToleranceCommand.Set(
                Tolerance.MATCH, POLICY, source, reason, new PersonId("P-LEAD"), Occurred.at(Instant.EPOCH));
    }
}
