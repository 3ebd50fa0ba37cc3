package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockMultipartFile;

/** What a crew does at a tree: measuring, the host check question by question, corrections, photos. */
class TreePagesTest {
    private static final String COMMAND = "019a0000-0000-7000-8000-0000000000c1";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void recordedServices() {
        String[][] recordings = {
            {"GET /trees/T-1305", "tree-whole"},
            {"GET /sites", "sites"},
            {"GET /species", "species"},
            {"GET /photos", "photos"},
            {"GET /host-checks", "host-checks"},
            {"GET /host-checks/keys", "host-keys"},
            {"GET /host-checks/findings", "host-findings"},
            {"POST /host-checks/next", "host-next"},
            {"GET /trees/T-1305/girths/check", "girth-doubt"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    private String page(Role role, String path) throws Exception {
        var answer = desk.reads(role, path);
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return answer.getContentAsString();
    }

    @Test
    void a_tree_shows_its_position_its_girths_as_a_line_its_photos_and_what_it_said_before() throws Exception {
        String page = page(Role.CREW, "/trees/T-1305");
        assertThat(page)
                .contains("40.4421, -75.3398", "RHUTY, staghorn sumac", "1,372 mm above ground", "two stems")
                .contains("class=\"girths\"", "M16 100 L624 59")
                .contains("species heaven, now sumac; because: saw the cone")
                .contains("/photos/PH-00112233445566778899AABBCCDDEEFF.jpg", "Erased: shows a person")
                .contains("confidence 75 %", "Spotted lanternfly (preferred)", "The register says otherwise");
        assertThat(page).doesNotContain("Erase the picture");
        assertThat(page(Role.FINANCE, "/trees/T-1305")).doesNotContain("Measure it", "Send the photo");
    }

    @Test
    void the_host_check_asks_one_question_and_each_answer_leads_on_with_those_before() throws Exception {
        String page = page(Role.CREW, "/trees/T-1305/host-check?a=leaf:many&a=twig:not-sure");
        assertThat(page)
                .contains("What does the edge of one leaflet look like?", "Question 3 of at most 5", "class=\"leaf\"")
                .contains("a=leaf:many&amp;a=twig:not-sure&amp;a=edge:smooth")
                .contains("a=leaf:many&amp;a=twig:not-sure&amp;a=edge:not-sure");
        assertThat(desk.services().last("POST").body())
                .contains("\"pest\":\"LYCMDE\"")
                .contains("{\"question\":\"twig\",\"answer\":\"not-sure\"}");
    }

    @Test
    void at_the_end_the_verdict_is_shown_with_its_confidence_and_stored_with_the_answers() throws Exception {
        desk.services().recorded("POST /host-checks/next", "host-end.json");
        assertThat(page(Role.CREW, "/trees/T-1305/host-check?a=leaf:many"))
                .contains("This is a host", "tree-of-heaven", "75 %", "The sap can irritate skin.");

        desk.services().answers("POST /host-checks", 200, "{\"outcome\":\"HOST\",\"confidencePercent\":75}");
        var sent = desk.sends(
                Role.CREW, "/trees/T-1305/host-check", "commandId", COMMAND, "pest", "LYCMDE", "a", "leaf:many");
        assertThat(sent.getRedirectedUrl()).isEqualTo("/trees/T-1305");
        assertThat(desk.services().last("POST").body())
                .contains("\"treeId\":\"T-1305\"", "{\"question\":\"leaf\",\"answer\":\"many\"}");
    }

    @Test
    void whoever_fits_a_band_is_told_of_the_host_check_and_no_girth_is_sent_that_nobody_measured() throws Exception {
        desk.services().recorded("GET /proposals", "proposal.json");
        for (String carried : new String[] {"reels", "batches", "crews"}) {
            desk.services().answers("GET /" + carried, 200, "{\"rows\":[],\"next\":null}");
        }
        String page = page(Role.CREW, "/bands/new?tree=T-1305");
        assertThat(page).contains("On record: 1,260 mm.", "name=\"girth\" value=\"\"");
        assertThat(page).doesNotContain("Nobody has checked yet");
        desk.services().answers("GET /host-checks", 200, "{\"rows\":[]}");
        assertThat(page(Role.CREW, "/bands/new?tree=T-1305")).contains("Nobody has checked yet");
    }

    @Test
    void a_doubtful_girth_is_asked_about_once_and_stored_when_confirmed() throws Exception {
        assertThat(page(Role.CREW, "/trees/T-1305/measure")).contains("1,260 mm");
        String asked = desk.sends(
                        Role.CREW, "/trees/T-1305/girths", "commandId", COMMAND, "girth", "78", "girthUnit", "ft")
                .getContentAsString();
        assertThat(asked).contains("Perhaps it is 78 in", "name=\"confirmed\"", "value=\"78\"");
        assertThat(desk.services().asked())
                .noneMatch(request -> request.method().equals("POST"));

        desk.services().answers("POST /trees/T-1305/girths", 200, "{\"treeId\":\"T-1305\"}");
        var sent = desk.sends(
                Role.CREW,
                "/trees/T-1305/girths",
                "commandId",
                COMMAND,
                "girth",
                "78",
                "girthUnit",
                "ft",
                "height",
                "1370",
                "heightUnit",
                "mm",
                "confirmed",
                "yes");
        assertThat(sent.getRedirectedUrl()).isEqualTo("/trees/T-1305");
        assertThat(desk.services().last("POST").body()).contains("\"girth\":\"78 ft\"", "\"height\":\"1370 mm\"");
    }

    @Test
    void a_correction_begins_with_what_the_register_says() throws Exception {
        assertThat(page(Role.DEPOT, "/trees/T-1305/correct"))
                .contains("value=\"sumac\"", "value=\"40.4421\"", "value=\"two stems\"")
                .containsPattern("value=\"RHUTY\"[^>]*selected");
        desk.services()
                .answers(
                        "POST /trees/T-1305/corrections",
                        422,
                        "{\"type\":\"/problems/tree-nothing-corrected\",\"title\":\"No\",\"status\":422,"
                                + "\"detail\":\"Tree [T-1305] is not corrected: all of it says so already.\"}");
        assertThat(desk.sends(
                                Role.CREW,
                                "/trees/T-1305/correct",
                                "commandId",
                                COMMAND,
                                "tag",
                                "1305",
                                "lat",
                                "40,5",
                                "reason",
                                "saw it")
                        .getContentAsString())
                .contains("all of it says so already", "value=\"saw it\"");
        assertThat(desk.services().last("POST").body()).contains("\"lat\":40.5");
    }

    @Test
    void a_photo_is_passed_on_and_its_way_back_is_never_an_address_that_came_with_it() throws Exception {
        desk.services().answers("POST /photos", 200, "{\"photoId\":\"PH-1\"}");
        var answer = desk.mvc()
                .perform(multipart("/photos")
                        .file(new MockMultipartFile("file", "a.jpg", "image/jpeg", new byte[] {1, 2, 3}))
                        .param("commandId", COMMAND)
                        .param("of", "tree")
                        .param("subject", "T-1305//elsewhere.example")
                        .with(user(RunningDesk.signedIn(Role.CREW)))
                        .with(csrf()))
                .andReturn()
                .getResponse();
        assertThat(answer.getRedirectedUrl()).isEqualTo("/trees/T-1305ELSEWHEREEXAMPLE");
        assertThat(desk.services().last("POST").body()).contains("name=\"of\"", "tree", COMMAND);
    }

    @Test
    void a_tree_that_is_gone_is_noted_with_how_it_went() throws Exception {
        desk.services().answers("POST /trees/T-1305/gone", 200, "{\"treeId\":\"T-1305\"}");
        assertThat(page(Role.CREW, "/trees/T-1305/gone")).contains("it was felled");
        desk.sends(Role.CREW, "/trees/T-1305/gone", "commandId", COMMAND, "how", "FELLED", "reason", "road works");
        assertThat(desk.services().last("POST").body()).contains("\"how\":\"FELLED\"", "\"reason\":\"road works\"");
    }
}
