package org.bandtrail.supplystock.countrules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules.ValueBasis;
import org.junit.jupiter.api.Test;

class CountRuleTest {
    private static final CountRules RULES = new CountRules(100, 5, 5, 5_000, ValueBasis.USED, 800, 950, 30, 91, 365);

    @Test
    void rules_hold_once_they_are_set_and_the_same_again_changes_nothing() {
        CountRule rule = CountRule.UNKNOWN;
        for (CountRuleEvent event : rule.decide(set(RULES, "common practice, no source", "first season"))) {
            rule = rule.evolve(event);
        }

        assertThat(rule.now()).isEqualTo(RULES);
        assertThat(rule.decide(set(RULES, "a", "b"))).isEmpty();
    }

    @Test
    void rules_without_source_or_reason_are_refused() {
        assertThatExceptionOfType(CountRuleRefused.RulesWithoutReason.class)
                .isThrownBy(() -> CountRule.UNKNOWN.decide(set(RULES, " ", "why")));
        assertThatExceptionOfType(CountRuleRefused.RulesWithoutReason.class)
                .isThrownBy(() -> CountRule.UNKNOWN.decide(set(RULES, "source", " ")));
    }

    @Test
    void figures_that_cannot_be_meant_are_refused() {
        CountRules swapped = new CountRules(100, 5, 5, 5_000, ValueBasis.USED, 950, 800, 30, 91, 365);
        CountRules seldomest = new CountRules(100, 5, 5, 5_000, ValueBasis.USED, 800, 950, 91, 30, 365);

        assertThatExceptionOfType(CountRuleRefused.RulesNotSound.class)
                .isThrownBy(() -> CountRule.UNKNOWN.decide(set(swapped, "s", "r")));
        assertThatExceptionOfType(CountRuleRefused.RulesNotSound.class)
                .isThrownBy(() -> CountRule.UNKNOWN.decide(set(seldomest, "s", "r")));
    }

    @Test
    void the_tolerance_is_the_fixed_one_or_the_share_of_the_book_figure_whichever_is_more() {
        assertThat(RULES.tolerance(false, 10_000)).isEqualTo(100);
        // 5 per mille of 50 m are 250 mm.
        assertThat(RULES.tolerance(false, 50_000)).isEqualTo(250);
        assertThat(RULES.tolerance(true, 400)).isEqualTo(5);
        assertThat(RULES.tolerance(true, 4_000)).isEqualTo(20);
    }

    private static CountRuleCommand set(CountRules rules, String source, String reason) {
        Occurred now = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
        return new CountRuleCommand.Set(CountRule.PROGRAMME, rules, source, reason, new PersonId("P-01"), now);
    }
}
