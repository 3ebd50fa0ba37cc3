package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.Test;

/** What is corrected about an item and a site, how long before a consent ends one is warned, and what the lead reads first. */
class SetUpAndHomePagesTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @Test
    void an_item_is_shown_with_what_can_be_corrected_and_passed_on_with_its_kind() throws Exception {
        desk.services().recorded("GET /items", "items-wide.json");

        String page = desk.reads(Role.DEPOT, "/set-up/items/TAPE-381").getContentAsString();
        assertThat(page)
                .contains("value=\"Wide tape\"", "value=\"381\"", "value=\"50000\"", "value=\"50.00\"")
                .contains("action=\"/reorder/TAPE-381\"", "its lead time is not set.")
                .doesNotContain("name=\"packSize\"", "name=\"opening\"");
        assertThat(desk.reads(Role.DEPOT, "/set-up/items").getContentAsString())
                .contains("href=\"/set-up/items/TAPE-381\"");

        desk.services().answers("POST /items/TAPE-381/correct", 422, """
                {"title":"No","status":422,"detail":"Item [TAPE-381]: it needs a width, not [0 mm]."}""");
        String back = desk.sends(
                        Role.DEPOT,
                        "/set-up/items/TAPE-381",
                        "name",
                        "Wide tape, clear",
                        "width",
                        "0",
                        "widthUnit",
                        "mm",
                        "unitCost",
                        "52.5",
                        "unitCostCurrency",
                        "USD",
                        "reason",
                        "new supplier")
                .getContentAsString();
        assertThat(back)
                .contains("it needs a width, not [0 mm].", "value=\"Wide tape, clear\"", "value=\"new supplier\"");
        assertThat(desk.services().last("POST").body())
                .contains("\"kind\":\"TAPE\"", "\"width\":\"0 mm\"", "\"minor\":5250");
    }

    @Test
    void an_item_that_nobody_registered_is_named() throws Exception {
        desk.services().recorded("GET /items", "items-wide.json");

        var answer = desk.reads(Role.DEPOT, "/set-up/items/TAPE-9");

        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("No item is called [TAPE-9].");
    }

    @Test
    void the_lead_reads_on_the_home_page_whose_consent_ends_and_the_crew_does_not() throws Exception {
        desk.services().recorded("GET /trail", "trail.json");
        desk.services().recorded("GET /audit", "audit.json");
        desk.services().recorded("GET /consents/standing", "standings.json");
        desk.services().answers("GET /bands/removals", 200, """
                {"past":0,"near":0,"noticeDays":14,"source":"own"}""");

        assertThat(desk.reads(Role.LEAD, "/").getContentAsString())
                .contains("2 sites need their owners: ", "consent ends today", "hang")
                .containsPattern("class=\"caution\"[^\n]*href=\"/sites/S-");
        assertThat(desk.reads(Role.CREW, "/").getContentAsString()).doesNotContain("need their owners");
    }

    @Test
    void a_silent_field_service_leaves_the_home_page_standing() throws Exception {
        desk.services().recorded("GET /trail", "trail.json");
        desk.services().recorded("GET /audit", "audit.json");

        var answer = desk.reads(Role.LEAD, "/");

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString())
                .contains("Whether a consent ends soon is not known: the field service does not answer.");
    }

    @Test
    void the_days_of_warning_are_changed_by_the_lead_with_reason_and_source() throws Exception {
        desk.services().recorded("GET /consents/standing", "standings.json");
        desk.services().answers("POST /consents/warning", 200, "{}");

        assertThat(desk.reads(Role.LEAD, "/consents/warning").getContentAsString())
                .contains("One is warned 30 days before a consent ends", "name=\"source\"");
        assertThat(desk.reads(Role.DEPOT, "/consents/warning").getStatus()).isEqualTo(403);
        var answer = desk.sends(
                Role.LEAD,
                "/consents/warning",
                "days",
                "45",
                "since",
                "2026-06-01",
                "reason",
                "owners travel in summer",
                "source",
                "the programme");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/sites");
        assertThat(desk.services().last("POST").body())
                .contains("\"days\":45", "\"since\":\"2026-06-01\"", "owners travel in summer", "the programme");
    }

    @Test
    void a_weekday_with_two_openings_keeps_both_when_its_form_is_saved() throws Exception {
        desk.services()
                .recordedWith(
                        "GET /sites/S-MILL",
                        "site.json",
                        "\"weekly\":[",
                        "\"weekly\":[{\"day\":\"SUNDAY\",\"from\":\"09:00:00\",\"until\":\"11:30:00\"},"
                                + "{\"day\":\"SUNDAY\",\"from\":\"14:15:00\",\"until\":\"17:45:00\"},");
        desk.services().recorded("GET /hazard-kinds", "hazard-kinds.json");
        desk.services().recorded("GET /consents", "consents.json");

        String page = desk.reads(Role.LEAD, "/sites/S-MILL/change").getContentAsString();
        assertThat(page)
                .contains("value=\"09:00\"", "value=\"11:30\"", "value=\"14:15\"", "value=\"17:45\"")
                .contains("Sunday again from", "One more time on a weekday");

        desk.services().answers("POST /sites/S-MILL/hours", 422, "{\"status\":422,\"detail\":\"no\"}");
        desk.sends(
                Role.LEAD,
                "/sites/S-MILL/hours",
                "day",
                "SUNDAY",
                "from",
                "09:00",
                "until",
                "11:30",
                "day",
                "SUNDAY",
                "from",
                "14:15",
                "until",
                "17:45",
                "day",
                "MONDAY",
                "from",
                "",
                "until",
                "");
        assertThat(desk.services().last("POST").body())
                .contains("\"from\":\"09:00\"", "\"from\":\"14:15\"", "\"until\":\"17:45\"")
                .doesNotContain("MONDAY");
    }
}
