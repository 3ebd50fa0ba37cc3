package org.bandtrail.siteinstalls.policies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PolicyScopeTest {
    private static final LocalDate MAY = LocalDate.parse("2026-05-01");

    private static PublishCutLengths publish(
            @Nullable String programme, @Nullable String pest, @Nullable String until) {
        return new PublishCutLengths(
                CutPolicy.ID,
                PolicySamples.USUAL,
                new PolicyScope(programme, pest),
                LocalDate.parse("2026-01-01"),
                until == null ? null : LocalDate.parse(until),
                "test",
                "test",
                new PersonId("P-01"),
                Occurred.at(Instant.parse("2026-02-01T08:00:00Z")));
    }

    private static CutPolicy after(PublishCutLengths... commands) {
        CutPolicy policy = CutPolicy.NONE;
        for (PublishCutLengths command : commands) {
            for (CutPolicyEvent event : policy.decide(command)) {
                policy = policy.evolve(event);
            }
        }
        return policy;
    }

    private static int version(CutPolicy policy, LocalDate day, @Nullable String programme, @Nullable String pest) {
        return policy.on(day, new PolicyScope(programme, pest))
                .map(CutPolicyVersion::version)
                .orElse(0);
    }

    @Test
    void the_closest_scope_decides_and_the_house_is_the_last_resort() {
        CutPolicy policy =
                after(publish(null, null, null), publish(null, "CHEIBR", null), publish("RIVERSIDE", "CHEIBR", null));
        assertThat(version(policy, MAY, "riverside", "cheibr")).isEqualTo(3);
        assertThat(version(policy, MAY, "HILLTOP", "CHEIBR")).isEqualTo(2);
        assertThat(version(policy, MAY, null, "CHEIBR")).isEqualTo(2);
        assertThat(version(policy, MAY, "RIVERSIDE", "LYCMDE")).isEqualTo(1);
        assertThat(version(policy, MAY, "RIVERSIDE", null)).isEqualTo(1);
    }

    @Test
    void after_its_last_day_a_version_gives_way_to_the_wider_scope() {
        CutPolicy policy = after(publish(null, null, null), publish(null, "CHEIBR", "2026-05-01"));
        assertThat(version(policy, MAY, null, "CHEIBR")).isEqualTo(2);
        assertThat(version(policy, MAY.plusDays(1), null, "CHEIBR")).isEqualTo(1);
    }

    @Test
    void a_version_that_ends_before_it_begins_is_refused() {
        assertThatThrownBy(() -> after(publish(null, null, "2025-12-31")))
                .isInstanceOf(CutPolicyRefused.EndsBeforeItBegins.class)
                .hasMessageContaining("2025-12-31");
    }

    @Test
    void a_version_for_a_programme_names_its_pest() {
        assertThatThrownBy(() -> after(publish("RIVERSIDE", " ", null)))
                .isInstanceOf(CutPolicyRefused.PestMissing.class)
                .hasMessageContaining("RIVERSIDE");
    }
}
