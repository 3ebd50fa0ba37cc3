package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;

/** Forms of money become wishes as supply-stock reads them. */
class MoneyFormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000003";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        desk.services().recorded("GET /grants", "grants.json");
        desk.services().recorded("GET /site-shares", "site-shares.json");
        desk.services().recorded("GET /sites", "sites.json");
        desk.services().recorded("GET /journal/accounts", "journal-accounts.json");
    }

    @Test
    void only_accounts_with_a_number_are_mapped() throws Exception {
        desk.services().answers("POST /journal/accounts", 422, "{\"title\": \"No\", \"status\": 422}");
        desk.sends(
                Role.FINANCE,
                "/journal/accounts",
                "commandId",
                COMMAND,
                "from",
                "2026-05",
                "ours",
                "stock",
                "number",
                "1310",
                "name",
                "Material",
                "ours",
                "site:S-MILL",
                "number",
                "",
                "name",
                "");

        assertThat(desk.services().last("POST").body())
                .contains("\"ours\":\"stock\",\"number\":\"1310\",\"name\":\"Material\"", "\"from\":\"2026-05\"")
                .doesNotContain("S-MILL");
    }

    @Test
    void percentages_are_sent_as_thousandths_and_empty_lines_are_left_out() throws Exception {
        desk.services().answers("POST /site-shares", 422, "{\"title\": \"No\", \"status\": 422, \"detail\": \"967\"}");

        String page = sharesOf("66.7", "30").getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains("{\"grantId\":\"G-RIVER\",\"permille\":667}")
                .contains("{\"grantId\":\"G-TOWN\",\"permille\":300}")
                .contains("\"from\":\"2026-07\"", "\"siteId\":\"S-MILL\"");
        assertThat(page).contains("967", "value=\"66.7\"", "value=\"S-MILL\"");
    }

    @Test
    void a_percentage_with_two_decimals_is_asked_again_without_troubling_a_service() throws Exception {
        assertThat(sharesOf("66.67", "33.33").getContentAsString()).contains("[66.67] is not a percentage");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    private MockHttpServletResponse sharesOf(String river, String town) throws Exception {
        return desk.sends(
                Role.FINANCE,
                "/grants/shares",
                "commandId",
                COMMAND,
                "siteId",
                "S-MILL",
                "from",
                "2026-07",
                "grantId",
                "G-RIVER",
                "percent",
                river,
                "grantId",
                "G-TOWN",
                "percent",
                town,
                "grantId",
                "",
                "percent",
                "");
    }
}
