package org.bandtrail.siteinstalls.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.bandtrail.siteinstalls.sites.SiteCommand.CloseSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.CorrectSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.ReopenSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.SetHazards;
import org.bandtrail.siteinstalls.sites.SiteCommand.SetHours;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteCorrected;
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

    private static Site after(SiteCommand... commands) {
        Site site = Site.NONE;
        for (SiteCommand command : commands) {
            for (SiteEvent event : site.decide(command)) {
                site = site.evolve(event);
            }
        }
        return site;
    }

    @Test
    void a_correction_keeps_the_old_value_and_one_that_changes_nothing_is_no_event() {
        SiteDetails better = new SiteDetails("Alder Brook", null, "by the mill");
        Site site = after(register("Alder brook"));
        assertThat(site.decide(new CorrectSite(ALDER, better, PERSON, WHEN)))
                .containsExactly(new SiteCorrected(
                        ALDER,
                        new SiteDetails("Alder brook", new Point(1, 2), "gate code at the depot"),
                        better,
                        PERSON,
                        WHEN));
        assertThat(site.decide(new CorrectSite(ALDER, site.details(), PERSON, WHEN)))
                .isEmpty();
        assertThatThrownBy(() -> site.decide(new CorrectSite(ALDER, new SiteDetails(" ", null, ""), PERSON, WHEN)))
                .isInstanceOf(SiteRefused.NameUnusable.class);
        assertThatThrownBy(() -> Site.NONE.decide(new CorrectSite(ALDER, better, PERSON, WHEN)))
                .isInstanceOf(SiteRefused.NotRegistered.class)
                .hasMessageContaining("ALDER");
    }

    @Test
    void hours_and_hazards_replace_what_was_there_and_tell_it() {
        OpeningHours mondays = new OpeningHours(
                List.of(new OpeningHours.Weekly(DayOfWeek.MONDAY, LocalTime.of(8, 0), LocalTime.of(16, 0))), List.of());
        List<Hazard> ticks = List.of(new Hazard("ticks", ""));
        Site site = after(
                register("Alder brook"),
                new SetHours(ALDER, mondays, PERSON, WHEN),
                new SetHazards(ALDER, ticks, PERSON, WHEN));
        assertThat(site.hours()).isEqualTo(mondays);
        assertThat(site.decide(new SetHours(ALDER, mondays, PERSON, WHEN))).isEmpty();
        assertThat(site.decide(new SetHazards(ALDER, List.of(), PERSON, WHEN)))
                .containsExactly(new SiteEvent.HazardsSet(ALDER, ticks, List.of(), PERSON, WHEN));
    }

    @Test
    void a_site_is_closed_with_a_reason_once_and_can_be_opened_again() {
        LocalDate june = LocalDate.of(2026, 6, 1);
        Site open = after(register("Alder brook"));
        Site closed = after(register("Alder brook"), new CloseSite(ALDER, june, " sold ", PERSON, WHEN));
        assertThat(closed.closedOn()).isEqualTo(june);
        assertThatThrownBy(() -> open.decide(new CloseSite(ALDER, june, " ", PERSON, WHEN)))
                .isInstanceOf(SiteRefused.ReasonMissing.class);
        assertThatThrownBy(() -> closed.decide(new CloseSite(ALDER, june, "again", PERSON, WHEN)))
                .isInstanceOf(SiteRefused.AlreadyThus.class)
                .hasMessageContaining("2026-06-01");
        assertThatThrownBy(() -> open.decide(new ReopenSite(ALDER, "why", PERSON, WHEN)))
                .isInstanceOf(SiteRefused.AlreadyThus.class);
        assertThat(closed.evolve(closed.decide(new ReopenSite(ALDER, "new owner", PERSON, WHEN))
                                .getFirst())
                        .closedOn())
                .isNull();
    }
}
