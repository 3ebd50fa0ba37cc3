package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;

/** Packing, handing out and signing for a kit, against recorded services. */
class KitFormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000003";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        desk.services().recorded("GET /items", "items.json");
        desk.services().recorded("GET /depots", "depots.json");
        desk.services().recorded("GET /crews", "crews.json");
        desk.services().recorded("GET /kits/rule", "kit-rule.json");
        desk.services().recorded("GET /trees/T-1301", "tree.json");
        desk.services().recorded("GET /kits/K-1", "kit.json");
        desk.services().recorded("GET /kits/K-2", "kit-reserved.json");
    }

    @Test
    void a_pasted_list_is_looked_at_before_anything_is_reserved() throws Exception {
        desk.services().recorded("POST /kits/plan", "kit-plan.json");

        String page = packs("/kits/plan").getContentAsString();

        assertThat(page).contains("3.96 m of tape", "R-0009: reserved for kit K-7", "Reserve this kit", "T-1301");
        assertThat(desk.services().last("POST").body())
                .contains("\"girth\":\"1260 mm\"", "\"tape\":\"TAPE-127\"", "\"overlap\":\"2 in\"");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.path().equals("/kits"));
    }

    @Test
    void what_the_depot_cannot_give_comes_back_with_the_list() throws Exception {
        desk.services().answers("POST /kits", 409, """
            {"type":"/problems/stock-is-short","title":"Stock is short","status":409,
             "detail":"Depot [RIVER] cannot fill this list: no reel of TAPE-127 has enough left for tree T-1301."}\
            """);

        assertThat(packs("/kits").getContentAsString()).contains("enough left for tree T-1301", "T-1301 x2");
    }

    @Test
    void a_reserved_kit_opens_with_its_pick_sheet() throws Exception {
        desk.services().answers("POST /kits", 200, "{}");

        assertThat(packs("/kits").getRedirectedUrl()).isEqualTo("/kits/K-2");
    }

    @Test
    void a_cut_plan_fills_the_list_and_its_lengths_and_reels_go_with_every_line_left_as_it_is() throws Exception {
        desk.services().recorded("GET /cut-plans/CP-1", "cut-plan.json");
        desk.services().answers("GET /kits/K-CP-1", 404, "{\"title\":\"No such\",\"status\":404}");
        String form = desk.reads(Role.DEPOT, "/kits/new?cut=CP-1").getContentAsString();
        assertThat(form)
                .contains("value=\"K-CP-1\"", "name=\"cut\" value=\"CP-1\"", ">T-1301</textarea>")
                .contains("The plan does not cut all pieces for T-1302, T-1303.");
        desk.services()
                .answers(
                        "POST /kits/plan",
                        200,
                        RecordedServices.text("kit-plan.json")
                                .replaceFirst(
                                        "\\{",
                                        "{\"otherwise\": [{\"treeId\": \"T-1301\", \"kind\": \"TAPE\","
                                                + " \"why\": \"reel R-0004 is not there\"}],"));

        String page =
                packs("/kits/plan", "T-1301\nT-1302 900 x2", "cut", "CP-1").getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains("\"tape\":\"1090 mm\"", "\"mesh\":\"1230 mm\"", "\"girth\":\"1000 mm\"")
                .contains("\"reelId\":\"R-0004\"", "\"reelId\":\"M-0002\"", "\"girth\":\"900 mm\"")
                .doesNotContain("R-0009");
        assertThat(page).contains("Tree T-1301: reel R-0004 is not there.");
    }

    @Test
    void the_person_signs_at_the_counter_with_their_own_sign_in() throws Exception {
        desk.services().answers("POST /kits/K-2/hand-out", 200, "{}");
        desk.services().answers("POST /kits/K-2/sign", 200, "{}");
        person("P-CREW", "wren");

        handsOut("wren", "marsh");

        assertThat(desk.services().asked())
                .filteredOn(asked -> asked.method().equals("POST"))
                .extracting(asked -> asked.path() + " by " + asked.person())
                .containsExactly("/kits/K-2/hand-out by P-DEPOT", "/kits/K-2/sign by P-CREW");
    }

    @Test
    void a_wrong_password_or_another_persons_sign_in_hands_nothing_out() throws Exception {
        person("P-CREW", "wren");
        person("P-55", "bo");

        assertThat(handsOut("wren", "wrong").getContentAsString()).contains("do not belong together");
        assertThat(handsOut("bo", "marsh").getContentAsString()).contains("cannot sign for it");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    private MockHttpServletResponse packs(String path) throws Exception {
        return packs(path, "T-1301 x2\nT-1302 900", "note", "");
    }

    private MockHttpServletResponse packs(String path, String trees, String more, String value) throws Exception {
        return desk.sends(
                Role.DEPOT,
                path,
                more,
                value,
                "commandId",
                COMMAND,
                "kitId",
                "K-2",
                "depotId",
                "RIVER",
                "personId",
                "P-CREW",
                "crewId",
                "C-HERON",
                "tape",
                "TAPE-127",
                "trees",
                trees,
                "overlap",
                "2",
                "overlapUnit",
                "in");
    }

    private MockHttpServletResponse handsOut(String user, String password) throws Exception {
        return desk.sends(
                Role.DEPOT,
                "/kits/K-2/hand-out",
                "commandId",
                COMMAND,
                "signCommandId",
                "01900000-0000-7000-8000-000000000004",
                "signUser",
                user,
                "signPassword",
                password);
    }

    /** The crew's person keeps the name that other tests know. */
    private void person(String id, String username) throws Exception {
        String name = id.equals("P-CREW") ? "Crew Person" : "Bo Rushy";
        String body = """
            {"personId":"%s","name":"%s","roles":["CREW"],"username":"%s","password":"marsh"}\
            """;
        desk.mvc()
                .perform(post("/api/people")
                        .contentType("application/json")
                        .header("Authorization", "Bearer " + RunningDesk.KEY)
                        .content(body.formatted(id, name, username)));
    }
}
