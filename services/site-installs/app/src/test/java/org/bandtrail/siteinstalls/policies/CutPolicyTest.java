package org.bandtrail.siteinstalls.policies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bandtrail.siteinstalls.policies.PolicySamples.publish;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent.CutLengthsPublished;
import org.junit.jupiter.api.Test;

class CutPolicyTest {
    private static CutPolicy after(CutPolicyCommand... commands) {
        CutPolicy policy = CutPolicy.NONE;
        for (CutPolicyCommand command : commands) {
            for (CutPolicyEvent event : policy.decide(command)) {
                policy = policy.evolve(event);
            }
        }
        return policy;
    }

    @Test
    void publishing_adds_the_next_version() {
        CutPolicy policy = after(publish("2026-01-01", "trade", "start"));
        List<CutPolicyEvent> events = policy.decide(publish("2026-03-01", "field trial", "tape came loose"));
        assertThat(events).singleElement().satisfies(event -> {
            CutLengthsPublished published = (CutLengthsPublished) event;
            assertThat(published.version()).isEqualTo(2);
            assertThat(published.source()).isEqualTo("field trial");
        });
    }

    @Test
    void a_version_without_a_source_is_refused() {
        assertThatThrownBy(() -> CutPolicy.NONE.decide(publish("2026-01-01", " ", "start")))
                .isInstanceOf(CutPolicyRefused.SourceMissing.class)
                .hasMessageContaining("2026-01-01");
    }

    @Test
    void a_version_without_a_reason_is_refused() {
        assertThatThrownBy(() -> CutPolicy.NONE.decide(publish("2026-01-01", "trade", "")))
                .isInstanceOf(CutPolicyRefused.ReasonMissing.class);
    }

    @Test
    void on_a_day_the_version_with_the_latest_first_day_is_in_force() {
        CutPolicy policy = after(
                publish("2026-01-01", "a", "a"), publish("2026-06-01", "b", "b"), publish("2026-03-01", "c", "c"));
        assertThat(versionOn(policy, "2025-12-31")).isEqualTo(0);
        assertThat(versionOn(policy, "2026-01-01")).isEqualTo(1);
        assertThat(versionOn(policy, "2026-03-01")).isEqualTo(3);
        assertThat(versionOn(policy, "2026-06-01")).isEqualTo(2);
    }

    @Test
    void of_two_versions_from_one_day_the_later_published_is_in_force() {
        CutPolicy policy = after(publish("2026-01-01", "a", "a"), publish("2026-01-01", "b", "b"));
        assertThat(versionOn(policy, "2026-02-01")).isEqualTo(2);
    }

    @Test
    void a_version_out_of_order_is_a_damaged_history() {
        CutPolicyEvent first =
                CutPolicy.NONE.decide(publish("2026-01-01", "a", "a")).getFirst();
        CutPolicy policy = CutPolicy.NONE.evolve(first);
        assertThatThrownBy(() -> policy.evolve(first)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void values_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> new CutLengths.TapeRule(Length.ofMm(1001), Length.ZERO, Length.ofMm(127)))
                .hasMessageContaining("overlap of the tape in mm [1001]");
        assertThatThrownBy(() -> new CutLengths.HeightRule(Length.ofMm(800), Length.ofMm(900), Length.ofMm(1500)))
                .hasMessageContaining("lowest height in mm [900]");
    }

    private static int versionOn(CutPolicy policy, String day) {
        return policy.on(LocalDate.parse(day)).map(CutPolicyVersion::version).orElse(0);
    }
}
