package org.bandtrail.siteinstalls.consents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class ConsentsOnPostgresTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 30);
    private final Http http;
    private final Projectors projectors;
    private final Consents consents;
    private final JdbcClient jdbc;

    @Autowired
    ConsentsOnPostgresTest(@LocalServerPort int port, Projectors projectors, Consents consents, JdbcClient jdbc) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.consents = consents;
        this.jdbc = jdbc;
    }

    private String give(String site, String until) {
        Http.Answer answer = http.post("/consents/give", """
                {"commandId":"%s","siteId":"%s","activities":["BANDS"],"pests":["LYCMDE"],"from":"2026-04-01",
                 "until":%s,"how":"letter","contact":{"name":"Imke Vossbarg","phone":"555 0100"}}
                """.formatted(Http.commandId(), site, until));
        assertThat(answer.status()).isEqualTo(200);
        return answer.body().path("consentId").asString();
    }

    private void act(String consentId, String what, String more) {
        assertThat(http.post(
                                "/consents/%s/%s".formatted(consentId, what),
                                "{\"commandId\":\"%s\"%s}".formatted(Http.commandId(), more))
                        .status())
                .isEqualTo(200);
    }

    private void settle() {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }

    @Test
    void a_plan_needs_a_consent_that_holds_on_the_day_and_covers_it() {
        SiteId site = new SiteId("CP-1");
        assertThatThrownBy(() -> consents.mustHold(site, JUNE, Activity.BANDS, null))
                .isInstanceOf(ConsentRefused.NothingHolds.class)
                .hasMessageContaining("CP-1")
                .hasMessageContaining("2026-06-30")
                .hasMessageContaining("None was ever entered")
                .hasMessageContaining("Ask the owner");
        String consentId = give("CP-1", "\"2026-06-30\"");
        settle();
        assertThat(consents.mustHold(site, JUNE, Activity.BANDS, "LYCMDE").consentId())
                .isEqualTo(consentId);
        assertThat(consents.validOn(site, JUNE.plusDays(1))).isEmpty();
        assertThat(consents.validOn(site, LocalDate.of(2026, 3, 31))).isEmpty();
        assertThatThrownBy(() -> consents.mustHold(site, JUNE, Activity.BANDS, "CHEIBR"))
                .hasMessageContaining("bands and guards against CHEIBR")
                .hasMessageContaining("bands and guards against LYCMDE, ends on 2026-06-30");
    }

    @Test
    void of_two_consents_the_one_that_lasts_longer_counts_and_a_withdrawn_one_does_not() {
        SiteId site = new SiteId("CP-2");
        give("CP-2", "\"2026-06-30\"");
        String open = give("CP-2", "null");
        settle();
        assertThat(consents.validOn(site, JUNE).orElseThrow().consentId()).isEqualTo(open);
        act(open, "withdraw", ",\"from\":\"2026-06-01\",\"reason\":\"sold\"");
        settle();
        assertThat(consents.validOn(site, JUNE).orElseThrow().validUntil()).isEqualTo(JUNE);
        assertThat(consents.validOn(site, JUNE.plusDays(1))).isEmpty();
    }

    @Test
    void those_that_end_soon_are_found_the_first_to_end_first() {
        String late = give("CP-3", "\"2027-03-20\"");
        String soon = give("CP-3", "\"2027-03-10\"");
        give("CP-3", "\"2027-04-30\"");
        give("CP-3", "null");
        settle();
        List<ConsentView> ending = consents.expiringBefore(LocalDate.of(2027, 3, 10), LocalDate.of(2027, 3, 21));
        assertThat(ending).extracting(ConsentView::consentId).containsExactly(soon, late);
    }

    @Test
    void a_person_can_be_erased_while_the_history_stays_whole() {
        String consentId = give("CP-4", "null");
        settle();
        String contact = consents.ofSite(new SiteId("CP-4")).getFirst().contactId();
        assertThat(http.get("/consent-contacts/" + contact).body().path("name").asString())
                .isEqualTo("Imke Vossbarg");
        assertThat(http.post(
                                "/consent-contacts/%s/erase".formatted(contact),
                                "{\"commandId\":\"%s\"}".formatted(Http.commandId()))
                        .status())
                .isEqualTo(200);
        assertThat(http.get("/consent-contacts/" + contact).body().path("name").asString())
                .isEmpty();
        act(consentId, "renew", ",\"until\":\"2026-12-31\"");
        projectors.rebuild("consent");
        assertThat(consents.ofSite(new SiteId("CP-4")).getFirst().validUntil()).isEqualTo("2026-12-31");
        Long left = jdbc.sql(
                        "SELECT count(*) FROM domain_event_entry WHERE convert_from(payload, 'UTF8') LIKE '%Vossbarg%'")
                .query(Long.class)
                .single();
        assertThat(left).isZero();
    }

    private JsonNode standing(String site, String day) {
        return http.get("/consents/standing?on=%s&after=%s&limit=1".formatted(day, site.substring(0, 3)))
                .body()
                .path("rows")
                .path(0);
    }

    @Test
    void one_is_warned_in_time_and_again_on_the_last_day() {
        http.post("/sites", "{\"commandId\":\"%s\",\"siteId\":\"CQ-1\",\"name\":\"Weir\"}".formatted(Http.commandId()));
        give("CQ-1", "\"2026-06-30\"");
        settle();
        assertThat(standing("CQ-1", "2026-05-30").path("standing").asString()).isEqualTo("HOLDS");
        assertThat(standing("CQ-1", "2026-05-31").path("standing").asString()).isEqualTo("ENDS_SOON");
        assertThat(standing("CQ-1", "2026-06-30").path("standing").asString()).isEqualTo("ENDS_TODAY");
        JsonNode after = standing("CQ-1", "2026-07-01");
        assertThat(after.path("standing").asString()).isEqualTo("NONE");
        assertThat(after.path("lastDay").asString()).isEqualTo("2026-06-30");
        assertThat(after.path("siteName").asString()).isEqualTo("Weir");
        assertThat(http.post("/consents/warning", """
                        {"commandId":"%s","since":"2026-05-20","days":40,"source":"our lead","reason":"post is slow"}
                        """.formatted(Http.commandId()))
                        .status())
                .isEqualTo(200);
        assertThat(standing("CQ-1", "2026-05-30").path("standing").asString()).isEqualTo("ENDS_SOON");
        jdbc.sql("DELETE FROM consent_warning WHERE since = '2026-05-20'").update();
    }

    @Test
    void bands_that_hang_without_consent_are_a_finding() {
        http.post("/bands", """
                {"commandId":"%s","bandId":"B-CR1","treeId":"CR-1-1","siteId":"CR-1","crewId":"K-1","personId":"P-07",
                 "tape":{"reelId":"R-1","length":"1 m"},"happenedAt":"2026-05-01T08:00:00Z"}
                """.formatted(Http.commandId()));
        settle();
        JsonNode site = standing("CR-1", "2026-06-01");
        assertThat(site.path("siteId").asString()).isEqualTo("CR-1");
        assertThat(site.path("standing").asString()).isEqualTo("BANDS_WITHOUT_CONSENT");
        assertThat(site.path("bandsUp").asInt()).isOne();
    }

    @Test
    void a_closed_site_takes_no_plans_from_that_day_on() {
        http.post("/sites", "{\"commandId\":\"%s\",\"siteId\":\"CS-1\",\"name\":\"Weir\"}".formatted(Http.commandId()));
        give("CS-1", "null");
        http.post(
                "/sites/CS-1/close",
                "{\"commandId\":\"%s\",\"on\":\"2026-06-30\",\"reason\":\"sold\"}".formatted(Http.commandId()));
        settle();
        assertThat(http.get("/consents/check?site=CS-1&on=2026-06-29").status()).isEqualTo(200);
        Http.Answer refused = http.get("/consents/check?site=CS-1&on=2026-06-30");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("detail").asString()).contains("CS-1").contains("closed from 2026-06-30");
    }

    @Test
    void a_consent_tells_its_history() {
        String consentId = give("CT-1", "\"2026-06-30\"");
        act(consentId, "renew", ",\"until\":\"2026-09-30\",\"how\":\"by phone\"");
        settle();
        JsonNode whole = http.get("/consents/" + consentId).body();
        assertThat(whole.path("history")).hasSize(2);
        assertThat(whole.path("history").path(0).path("note").asString())
                .isEqualTo("was until 2026-06-30, now until 2026-09-30. by phone");
        assertThat(http.get("/consents?site=CT-1").body().path("rows")).hasSize(1);
        assertThat(http.get("/consents?limit=1").body().path("next").asString()).isNotBlank();
        assertThat(http.get("/consents/C-NONE").status()).isEqualTo(404);
    }
}
