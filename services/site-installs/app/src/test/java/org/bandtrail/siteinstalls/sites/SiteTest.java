package org.bandtrail.siteinstalls.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteRegistered;
import org.junit.jupiter.api.Test;

class SiteTest {
    private static final SiteId ALDER = new SiteId("ALDER");
    private static final PersonId PERSON = new PersonId("P-01");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-03-01T08:00:00Z"));

    private static RegisterSite register(String name) {
        return new RegisterSite(ALDER, name, new Point(1, 2), " gate code at the depot ", PERSON, WHEN);
    }

    @Test
    void a_free_identity_is_registered() {
        assertThat(Site.NONE.decide(register(" Alder brook ")))
                .containsExactly(new SiteRegistered(
                        ALDER, "Alder brook", new Point(1, 2), "gate code at the depot", PERSON, WHEN));
    }

    @Test
    void a_taken_identity_is_refused() {
        Site site = Site.NONE.evolve(Site.NONE.decide(register("Alder brook")).getFirst());
        assertThatThrownBy(() -> site.decide(register("Alder brook")))
                .isInstanceOf(SiteRefused.AlreadyRegistered.class)
                .hasMessageContaining("ALDER")
                .hasMessageContaining("Alder brook");
    }

    @Test
    void a_name_of_120_characters_fits_and_one_more_is_refused() {
        assertThat(Site.NONE.decide(register("n".repeat(120)))).hasSize(1);
        assertThatThrownBy(() -> Site.NONE.decide(register("n".repeat(121))))
                .isInstanceOf(SiteRefused.NameUnusable.class);
        assertThatThrownBy(() -> Site.NONE.decide(register("  "))).isInstanceOf(SiteRefused.NameUnusable.class);
    }

    @Test
    void a_second_registration_is_a_damaged_history() {
        SiteEvent event = Site.NONE.decide(register("Alder brook")).getFirst();
        Site site = Site.NONE.evolve(event);
        assertThatThrownBy(() -> site.evolve(event)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void a_point_is_kept_to_seven_decimals_and_must_be_on_the_map() {
        Point point = Point.ofDegrees(new BigDecimal("40.12345678"), new BigDecimal("-75"));
        assertThat(point).isEqualTo(new Point(401_234_568, -750_000_000));
        assertThat(Point.degrees(point.latitudeE7())).isEqualTo(new BigDecimal("40.1234568"));
        assertThat(new Point(900_000_000, 1_800_000_000)).isNotNull();
        assertThatThrownBy(() -> new Point(900_000_001, 0)).hasMessageContaining("Latitude [90.0000001]");
        assertThatThrownBy(() -> new Point(0, 1_800_000_001)).hasMessageContaining("Longitude");
        assertThatThrownBy(() -> Point.ofDegrees(BigDecimal.ONE, new BigDecimal("1e6")))
                .hasMessageContaining("Longitude");
    }
}
