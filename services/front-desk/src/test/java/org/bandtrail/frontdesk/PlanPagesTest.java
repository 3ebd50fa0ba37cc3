package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;

/** The pages about work plans, from recorded answers, and what their forms pass on. */
class PlanPagesTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000009";
    private static final String PLAN = "/plans/2026-06-16-C-HERON";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"GET /items", "items"},
            {"GET /depots", "depots"},
            {"GET /crews", "crews"},
            {"GET /sites", "sites"},
            {"GET /trees", "trees"},
            {"GET /kits/rule", "kit-rule"},
            {"GET /reorder-points", "reorder-points"},
            {"GET /species", "species"},
            {"GET /work-plans", "plans"},
            {"GET /devices", "devices"},
            {"GET /work-plans/2026-06-16-C-HERON", "plan"},
            {"POST /work-plans/check", "plan-checked"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/plans?from=2026-06-17     | 2 plans</b> with 3 trees in these two weeks; one is not agreed yet | Heron",
                "/plans?from=2026-06-17     | <th scope=\"col\">Heron</th> | 2 trees, agreed",
                "/plans?from=2026-06-17     | data-crew=\"Otter\"         | one tree, drafted",
                "/plans/2026-06-16-C-HERON  | 3 bands on 2 trees        | The depot does not have all it takes.",
                "/plans/2026-06-16-C-HERON  | not checked as a host     | &lt;b&gt;AILAL&lt;/b&gt;",
                "/plans/2026-06-16-C-HERON  | The longest piece is 1,490 mm, the longest reel has 1.40 m | About 1.6 h of 13 h",
                "/plans/2026-06-16-C-HERON  | measured anew: 995 mm     | a band is up",
                "/plans/2026-06-16-C-HERON  | /kits/new?plan=2026-06-16-C-HERON | gloves and eye protection",
                "/plans/new                 | Choose a site first       | Mill pond woods",
                "/plans/new?site=S-MILL     | value=\"T-1302\"            | One tree has no girth; measure it first.",
                "/plans/2026-06-16-C-HERON/change | value=\"T-1301\" checked | Why it changes",
                "/kits/new?plan=2026-06-16-C-HERON | T-1301 x2          | selected",
                "/reorder                   | 40.00 m</b> planned until | 3.60 m of it beyond the forecast",
            })
    void a_page_shows_what_the_services_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void without_any_plan_the_board_says_what_to_do_first() throws Exception {
        desk.services().answers("GET /work-plans", 200, "{\"rows\": [], \"next\": null}");
        assertThat(desk.reads(Role.LEAD, "/plans").getContentAsString())
                .contains("Nothing is planned in these two weeks.", "Choose a site and its trees first");
        assertThat(desk.reads(Role.CREW, "/plans").getContentAsString()).contains("Your lead makes the plans.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/plans/new", "/plans/2026-06-16-C-HERON/change"})
    void only_the_lead_makes_plans(String path) throws Exception {
        assertThat(desk.reads(Role.CREW, path).getStatus()).isEqualTo(403);
        assertThat(desk.reads(Role.DEPOT, PLAN).getContentAsString())
                .contains("Pack the kit for it")
                .doesNotContain("Call it off");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/plans.csv", "/plans.xlsx", PLAN + "/walk.csv", PLAN + "/walk.xlsx"})
    void lists_come_out_as_files(String path) throws Exception {
        assertThat(desk.reads(Role.CREW, path).getStatus()).isEqualTo(200);
    }

    @Test
    void a_plan_is_looked_at_before_it_is_kept() throws Exception {
        MockHttpServletResponse page = sends("/plans/check", "tree", "T-1302", "bands-T-1302", "2");

        assertThat(desk.services().last("POST").body())
                .contains("\"treeId\":\"T-1302\"", "\"bands\":2", "\"day\":\"2026-06-16\"", "\"measure\":\"metric\"")
                .doesNotContain("lastDay", "commandId");
        assertThat(page.getContentAsString())
                .contains("the depot has all it takes.", "Nothing is kept yet.", "Keep it as a draft", "It suffices.");
    }

    @Test
    void a_plan_without_trees_is_asked_again_without_troubling_a_service() throws Exception {
        assertThat(sends("/plans/check").getContentAsString()).contains("No tree is chosen.");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @Test
    void a_refused_plan_comes_back_with_the_reason_and_its_trees() throws Exception {
        desk.services()
                .answers(
                        "POST /work-plans",
                        409,
                        "{\"title\":\"No\",\"status\":409,\"detail\":\"No consent covers it.\"}");
        String page = sends("/plans", "tree", "T-1302", "agree", "true").getContentAsString();

        assertThat(desk.services().last("POST").body()).contains("\"agree\":true", COMMAND);
        assertThat(page).contains("No consent covers it.", "value=\"T-1302\" checked");
    }

    @Test
    void calling_off_passes_the_reason_on() throws Exception {
        desk.services()
                .answers("POST /work-plans/2026-06-16-C-HERON/call-off", 422, "{\"title\":\"No\",\"status\":422}");
        desk.sends(Role.LEAD, PLAN + "/call-off", "commandId", COMMAND, "why", "rain");
        assertThat(desk.services().last("POST").body()).contains("\"why\":\"rain\"", COMMAND);
    }

    private MockHttpServletResponse sends(String path, String... more) throws Exception {
        String[] fields = {
            "commandId",
            COMMAND,
            "site",
            "S-MILL",
            "day",
            "2026-06-16",
            "lastDay",
            "",
            "crewId",
            "C-HERON",
            "depotId",
            "RIVER",
            "tape",
            "TAPE-127",
            "mesh",
            "MESH-300"
        };
        String[] all = new String[fields.length + more.length];
        System.arraycopy(fields, 0, all, 0, fields.length);
        System.arraycopy(more, 0, all, fields.length, more.length);
        return desk.sends(Role.LEAD, path, all);
    }
}
