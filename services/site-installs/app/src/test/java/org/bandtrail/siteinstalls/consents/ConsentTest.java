package org.bandtrail.siteinstalls.consents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Ask;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Decline;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Give;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Renew;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Withdraw;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentRenewed;
import org.bandtrail.siteinstalls.contacts.ContactId;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ConsentTest {
    private static final ConsentId ID = new ConsentId("C-1");
    private static final SiteId ALDER = new SiteId("ALDER");
    private static final ContactId OWNER = new ContactId("P-OWNER");
    private static final PersonId LEAD = new PersonId("P-01");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-03-01T08:00:00Z"));
    private static final ConsentScope BANDS = new ConsentScope(List.of(Activity.BANDS), List.of(), "");
    private static final LocalDate APRIL = LocalDate.of(2026, 4, 1);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 30);

    private static Ask ask() {
        return new Ask(ID, ALDER, OWNER, BANDS, LEAD, WHEN);
    }

    private static Give give(SiteId site, LocalDate from, @Nullable LocalDate until) {
        return new Give(ID, site, OWNER, BANDS, from, until, " letter ", LEAD, WHEN);
    }

    private static Renew renew(@Nullable LocalDate until) {
        return new Renew(ID, until, "by phone", LEAD, WHEN);
    }

    private static Withdraw withdraw(LocalDate from) {
        return new Withdraw(ID, from, "sold", LEAD, WHEN);
    }

    private static Consent after(ConsentCommand... commands) {
        Consent consent = Consent.NONE;
        for (ConsentCommand command : commands) {
            for (ConsentEvent event : consent.decide(command)) {
                consent = consent.evolve(event);
            }
        }
        return consent;
    }

    @Test
    void it_holds_from_its_first_day_to_its_last_and_not_one_day_more() {
        Consent consent = after(ask(), give(ALDER, APRIL, JUNE));
        assertThat(consent.holdsOn(APRIL)).isTrue();
        assertThat(consent.holdsOn(JUNE)).isTrue();
        assertThat(consent.holdsOn(APRIL.minusDays(1))).isFalse();
        assertThat(consent.holdsOn(JUNE.plusDays(1))).isFalse();
        assertThat(after(give(ALDER, APRIL, null)).holdsOn(LocalDate.of(2099, 1, 1)))
                .isTrue();
        assertThat(after(ask()).holdsOn(APRIL)).isFalse();
    }

    @Test
    void a_renewal_keeps_the_last_day_it_had_visible() {
        Consent consent = after(give(ALDER, APRIL, JUNE));
        assertThat(consent.decide(renew(null)))
                .containsExactly(new ConsentRenewed(ID, JUNE, null, "by phone", LEAD, WHEN));
        assertThat(after(give(ALDER, APRIL, JUNE), renew(JUNE.plusDays(9))).holdsOn(JUNE.plusDays(9)))
                .isTrue();
    }

    @Test
    void what_is_withdrawn_no_longer_holds_from_that_day_on_and_an_earlier_day_is_taken() {
        Consent consent = after(give(ALDER, APRIL, JUNE), withdraw(JUNE.minusDays(5)));
        assertThat(consent.holdsOn(JUNE.minusDays(6))).isTrue();
        assertThat(consent.holdsOn(JUNE.minusDays(5))).isFalse();
        assertThat(consent.decide(withdraw(JUNE.minusDays(9)))).hasSize(1);
        assertThatThrownBy(() -> consent.decide(withdraw(JUNE.minusDays(5))))
                .isInstanceOf(ConsentRefused.DoesNotFollow.class)
                .hasMessageContaining("C-1")
                .hasMessageContaining("withdrawn");
    }

    @Test
    void nothing_follows_that_makes_no_sense() {
        assertThatThrownBy(() -> Consent.NONE.decide(renew(JUNE))).hasMessageContaining("not known");
        assertThatThrownBy(() -> after(ask()).decide(ask())).isInstanceOf(ConsentRefused.DoesNotFollow.class);
        assertThatThrownBy(() -> after(ask()).decide(renew(JUNE))).hasMessageContaining("asked");
        assertThatThrownBy(() -> after(give(ALDER, APRIL, JUNE)).decide(new Decline(ID, "", LEAD, WHEN)))
                .hasMessageContaining("withdrawn");
        Consent declined = after(ask(), new Decline(ID, "no", LEAD, WHEN));
        assertThatThrownBy(() -> declined.decide(give(ALDER, APRIL, JUNE))).hasMessageContaining("declined");
        assertThatThrownBy(() -> declined.decide(withdraw(APRIL))).isInstanceOf(ConsentRefused.DoesNotFollow.class);
    }

    @Test
    void a_consent_is_given_for_the_site_it_was_asked_for_and_its_days_are_in_order() {
        assertThatThrownBy(() -> after(ask()).decide(give(new SiteId("OAK"), APRIL, JUNE)))
                .isInstanceOf(ConsentRefused.OtherSite.class)
                .hasMessageContaining("OAK");
        assertThat(Consent.NONE.decide(give(ALDER, APRIL, APRIL))).hasSize(1);
        assertThatThrownBy(() -> Consent.NONE.decide(give(ALDER, APRIL, APRIL.minusDays(1))))
                .isInstanceOf(ConsentRefused.EndsBeforeItStarts.class)
                .hasMessageContaining("2026-03-31");
        assertThatThrownBy(() -> after(give(ALDER, APRIL, JUNE)).decide(renew(APRIL.minusDays(1))))
                .isInstanceOf(ConsentRefused.EndsBeforeItStarts.class);
    }

    @Test
    void a_scope_covers_what_it_names_and_no_pest_named_is_any_pest() {
        ConsentScope narrow =
                new ConsentScope(List.of(Activity.TRAPS, Activity.BANDS), List.of(" lycmde ", "LYMADI"), " meadow ");
        assertThat(narrow.activities()).containsExactly(Activity.BANDS, Activity.TRAPS);
        assertThat(narrow.covers(Activity.BANDS, "LYCMDE")).isTrue();
        assertThat(narrow.covers(Activity.BANDS, "CHEIBR")).isFalse();
        assertThat(narrow.covers(Activity.FELL, null)).isFalse();
        assertThat(BANDS.covers(Activity.BANDS, "CHEIBR")).isTrue();
        assertThatThrownBy(() -> new ConsentScope(List.of(), List.of(), "")).hasMessageContaining("allows nothing");
        assertThatThrownBy(() -> new ConsentScope(List.of(Activity.BANDS), List.of("fly 1"), ""))
                .hasMessageContaining("FLY 1");
    }

    @Test
    void events_that_cannot_follow_are_a_damaged_history() {
        ConsentEvent given = Consent.NONE.decide(give(ALDER, APRIL, JUNE)).getFirst();
        Consent consent = Consent.NONE.evolve(given);
        assertThatThrownBy(() -> consent.evolve(given)).isInstanceOf(IllegalStateException.class);
        ConsentEvent renewed = consent.decide(renew(JUNE)).getFirst();
        assertThatThrownBy(() -> Consent.NONE.evolve(renewed)).isInstanceOf(IllegalStateException.class);
    }
}
