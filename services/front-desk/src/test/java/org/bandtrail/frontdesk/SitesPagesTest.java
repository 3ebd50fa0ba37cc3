package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sites, consents and the map, from recorded answers. */
class SitesPagesTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"/sites", "sites"},
            {"/sites/S-MILL", "site"},
            {"/consents/standing", "standings"},
            {"/consents", "consents"},
            {"/consents/C-1", "consent"},
            {"/consent-contacts/P-OWNER", "consent-contact"},
            {"/hazard-kinds", "hazard-kinds"},
            {"/map", "map"},
            {"/species", "species"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/sites               | 2 need their owners          | Ask the owner today, or take the bands down.",
                "/sites               | consent ends today           | One is warned 30 days before",
                "/sites/S-MILL        | Nobody allows work here today | Work on the side away from traffic.",
                "/sites/S-MILL        | 0.94 ha                      | 9421.19 m² stored",
                "/sites/S-MILL        | Monday 08:00 to 16:30        | Before: Mill pond wood",
                "/sites/S-MILL/change | the old value stays          | east edge",
                "/sites/S-MILL/consents/new | What does the owner of Mill pond woods say? | Only the lead sees it.",
                "/consents/C-1        | It holds today               | Imke Vossbarg, 555 0100",
                "/consents/C-1        | against Spotted lanternfly    | It holds today",
                "/map                 | Tree 1303, band must come off | 7 trees have no position",
                "/map                 | href=\"/sites/S-WEIR\"        | band up",
                "/map?south=40.4&west=-75.4&north=40.5&east=-75.3 | in this part | Further away",
            })
    void a_page_shows_what_the_services_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void many_trees_are_one_circle_that_leads_closer() throws Exception {
        desk.services().recorded("GET /map", "map-gathered.json");

        assertThat(desk.reads(Role.CREW, "/map").getContentAsString())
                .contains("1000 trees, look closer", "/map?south=40.449000&amp;west=-75.351000");
    }

    @Test
    void who_an_owner_is_is_shown_to_the_lead_alone() throws Exception {
        var answer = desk.reads(Role.CREW, "/consents/C-1");

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains("It holds today").doesNotContain("Vossbarg", "555 0100");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.toString().contains("consent-contacts"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sites.csv", "/sites.xlsx", "/consents.csv", "/consents.xlsx"})
    void every_list_comes_out_as_a_file(String path) throws Exception {
        var answer = desk.reads(Role.FINANCE, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getHeader("Content-Disposition")).contains("attachment");
    }

    @Test
    void a_boundary_that_is_no_geojson_comes_back_with_what_to_do() throws Exception {
        var answer = desk.sends(Role.LEAD, "/sites/S-MILL/boundary", "boundary", "{\"type\":");

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString())
                .contains("The boundary is not GeoJSON", "from the first { to the last }");
    }

    @Test
    void a_refused_consent_comes_back_with_everything_typed() throws Exception {
        desk.services().answers("POST /consents/give", 422, """
                {"type":"/problems/consent-ends-before-it-starts","detail":"Consent [C-9] would end on 2026-05-01."}""");

        var answer = desk.sends(
                Role.LEAD,
                "/sites/S-MILL/consents",
                "said",
                "yes",
                "activities",
                "BANDS",
                "contactName",
                "Imke V.",
                "from",
                "2026-06-01",
                "until",
                "2026-05-01");

        assertThat(answer.getContentAsString()).contains("would end on 2026-05-01", "Imke V.");
    }

    @Test
    void a_withdrawal_is_passed_on() throws Exception {
        desk.services().answers("POST /consents/C-1/withdraw", 200, "{\"consentId\":\"C-1\"}");

        var answer = desk.sends(Role.LEAD, "/consents/C-1/withdraw", "from", "2026-07-01", "reason", "sold");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/consents/C-1");
        assertThat(desk.services().asked()).anySatisfy(asked -> {
            assertThat(asked.method() + " " + asked.path()).isEqualTo("POST /consents/C-1/withdraw");
            assertThat(asked.body()).contains("2026-07-01", "sold");
        });
    }
}
