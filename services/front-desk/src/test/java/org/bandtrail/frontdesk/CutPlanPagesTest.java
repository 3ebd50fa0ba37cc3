package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages about cut plans, from recorded answers, and what their forms pass on. */
class CutPlanPagesTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000009";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"GET /items", "items"},
            {"GET /depots", "depots"},
            {"GET /cut-plans", "cut-plans"},
            {"GET /cut-plans/CP-1", "cut-plan"},
            {"GET /devices", "devices"},
            {"GET /work-plans/2026-06-16-C-HERON", "plan"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/cut-plans                              | CP-1                     | handed over as K-0042",
                "/cut-plans/CP-1                         | 6 pieces</b> for 3 trees | no plan can lose less than 0.12 m",
                "/cut-plans/CP-1                         | MESH-305-12: 2 pieces are not cut | Buy one reel of 15.24 m.",
                "/cut-plans/CP-1                         | 39.86 m stay on the reel | bin A-03, 3.27 m, begun",
                "/cut-plans/CP-1                         | The search ended with its time. | gloves and eye protection",
                "/cut-plans/CP-1                         | 1,290 mm                 | not cut</td>",
                "/cut-plans/new?plan=2026-06-16-C-HERON  | T-1301 x 2               | T-1302",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.DEPOT, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void without_any_cut_plan_the_list_says_where_to_start() throws Exception {
        desk.services().answers("GET /cut-plans", 200, "{\"rows\": [], \"next\": null}");
        assertThat(desk.reads(Role.DEPOT, "/cut-plans").getContentAsString())
                .contains("Start from <a href=\"/plans\">");
        assertThat(desk.reads(Role.CREW, "/cut-plans").getContentAsString())
                .contains("The depot or your lead works them out.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/cut-plans.csv", "/cut-plans.xlsx", "/cut-plans/CP-1/pieces.csv", "/cut-plans/CP-1/pieces.xlsx"
            })
    void lists_come_out_as_files(String path) throws Exception {
        assertThat(desk.reads(Role.CREW, path).getStatus()).isEqualTo(200);
    }

    @Test
    void a_list_of_trees_is_passed_on_in_its_order_with_the_bands_of_each() throws Exception {
        desk.services()
                .answers(
                        "POST /cut-plans",
                        409,
                        "{\"title\":\"No\",\"status\":409,\"detail\":\"No consent covers it.\"}");
        String page = draw("T-0104 x 2\r\n\r\n T-0099\r\n");

        assertThat(desk.services().last("POST").body())
                .contains("\"bands\":2", "\"measure\":\"METRIC\"", "\"day\":\"2026-06-18\"", COMMAND)
                .containsSubsequence("T-0104", "T-0099")
                .doesNotContain("blade", "seconds");
        assertThat(page).contains("No consent covers it.", "T-0104 x 2");
    }

    @Test
    void a_line_that_is_no_tree_is_named_without_troubling_the_service() throws Exception {
        assertThat(draw("T-0104 two bands")).contains("[T-0104 two bands] is no tree.");
        assertThat(draw("  ")).contains("No tree is on the list.");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @Test
    void agreeing_to_a_part_and_dropping_pass_on_what_was_said() throws Exception {
        desk.services().answers("POST /cut-plans/CP-1/agreed", 409, "{\"title\":\"No\",\"status\":409}");
        desk.services().answers("POST /cut-plans/CP-1/dropped", 422, "{\"title\":\"No\",\"status\":422}");
        desk.sends(Role.DEPOT, "/cut-plans/CP-1/agreed", "commandId", COMMAND, "partly", "true");
        assertThat(desk.services().last("POST").body()).contains("\"partly\":true", COMMAND);
        desk.sends(Role.DEPOT, "/cut-plans/CP-1/dropped", "commandId", COMMAND, "reason", "rain");
        assertThat(desk.services().last("POST").body()).contains("\"reason\":\"rain\"");
    }

    @Test
    void an_agreed_plan_leads_to_its_kit_and_the_kit_back_to_handing_it_over() throws Exception {
        String drawn = RecordedServices.text("cut-plan.json");
        desk.services().answers("GET /cut-plans/CP-1", 200, drawn.replace("drawn\"", "agreed\""));
        desk.services().answers("GET /kits/K-CP-1", 404, "{\"title\":\"No such\",\"status\":404}");
        assertThat(desk.reads(Role.DEPOT, "/cut-plans/CP-1").getContentAsString())
                .contains("/kits/new?cut=CP-1", "Pack the kit for it");

        String kit = RecordedServices.text("kit-reserved.json").replace("\"K-2\"", "\"K-CP-1\"");
        desk.services().answers("GET /kits/K-CP-1", 200, kit);
        assertThat(desk.reads(Role.DEPOT, "/cut-plans/CP-1").getContentAsString())
                .contains("is reserved for it.", "value=\"K-CP-1\"")
                .doesNotContain("Pack the kit for it");
        assertThat(desk.reads(Role.DEPOT, "/kits/K-CP-1").getContentAsString())
                .contains("It holds the pieces of", "/cut-plans/CP-1/handed-over", "It is handed over");
    }

    @Test
    void crews_read_cut_plans_and_do_not_make_them() throws Exception {
        assertThat(desk.reads(Role.CREW, "/cut-plans/new").getStatus()).isEqualTo(403);
        assertThat(desk.reads(Role.CREW, "/cut-plans/CP-1").getContentAsString())
                .contains("Cut sheet on paper")
                .doesNotContain("Agree to it");
    }

    private String draw(String trees) throws Exception {
        return desk.sends(
                        Role.DEPOT,
                        "/cut-plans",
                        "commandId",
                        COMMAND,
                        "depotId",
                        "RIVER",
                        "day",
                        "2026-06-18",
                        "tape",
                        "TAPE-127",
                        "mesh",
                        "",
                        "trees",
                        trees)
                .getContentAsString();
    }
}
