package org.bandtrail.supplystock.costpolicies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Map;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class CostPolicyTest {
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-11-02T09:00:00Z"));

    @Test
    void until_somebody_decides_the_oldest_go_first_and_a_method_holds_until_the_next() {
        assertThat(CostPolicy.UNKNOWN.of(2026)).isEqualTo(CostMethod.OLDEST_FIRST);
        CostPolicy policy = new CostPolicy(Map.of(2027, CostMethod.MOVING_AVERAGE, 2030, CostMethod.OLDEST_FIRST));
        assertThat(policy.of(2026)).isEqualTo(CostMethod.OLDEST_FIRST);
        assertThat(policy.of(2029)).isEqualTo(CostMethod.MOVING_AVERAGE);
        assertThat(policy.of(2031)).isEqualTo(CostMethod.OLDEST_FIRST);
    }

    @Test
    void a_year_is_set_once_with_its_reason_and_a_change_of_mind_before_it_begins_is_kept() {
        CostPolicy policy = after(CostPolicy.UNKNOWN, set(2027, CostMethod.MOVING_AVERAGE, " prices jump ", false));
        assertThat(policy.of(2027)).isEqualTo(CostMethod.MOVING_AVERAGE);
        assertThat(policy.decide(set(2027, CostMethod.MOVING_AVERAGE, "again", true)))
                .isEmpty();
        assertThat(after(policy, set(2027, CostMethod.OLDEST_FIRST, "auditor", false))
                        .of(2027))
                .isEqualTo(CostMethod.OLDEST_FIRST);
    }

    @Test
    void a_year_that_has_begun_keeps_its_method() {
        assertThatThrownBy(() -> CostPolicy.UNKNOWN.decide(set(2026, CostMethod.MOVING_AVERAGE, "prices jump", true)))
                .isInstanceOf(CostPolicyRefused.YearHasBegun.class)
                .hasMessage("Year [2026] has entries in the books and keeps [oldest first] to its end. "
                        + "Choose year [2027] or a later one.");
    }

    @Test
    void a_policy_without_a_reason_or_a_year_is_refused() {
        assertThatThrownBy(() -> CostPolicy.UNKNOWN.decide(set(2027, CostMethod.MOVING_AVERAGE, " ", false)))
                .isInstanceOf(CostPolicyRefused.CostPolicyWithoutReason.class)
                .hasMessageContaining("[2027]");
        assertThatThrownBy(() -> CostPolicy.UNKNOWN.decide(set(27, CostMethod.MOVING_AVERAGE, "typed short", false)))
                .isInstanceOf(CostPolicyRefused.YearUnfit.class)
                .hasMessageContaining("[27]");
    }

    private static CostPolicy after(CostPolicy policy, CostPolicyCommand command) {
        CostPolicy now = policy;
        for (CostPolicyEvent event : policy.decide(command)) {
            now = now.evolve(event);
        }
        return now;
    }

    private static CostPolicyCommand set(int year, CostMethod method, String reason, boolean begun) {
        return new CostPolicyCommand.Set(
                CostPolicyId.FASTENERS, year, method, reason, begun, new PersonId("P-02"), NOW);
    }
}
