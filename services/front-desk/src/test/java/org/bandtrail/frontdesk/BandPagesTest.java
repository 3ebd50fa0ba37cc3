package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockMultipartFile;

/** The life of a band on its page, bands that must come off, mesh used again. Today is 12 June 2026. */
class BandPagesTest {
    private static final String COMMAND = "019a0000-0000-7000-8000-0000000000d1";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void recordedServices() {
        String[][] recordings = {
            {"GET /bands/B-0001", "band-life"},
            {"GET /bands", "bands-due"},
            {"GET /mesh-pieces", "mesh-pieces"},
            {"GET /mesh-pieces/MP-B2A7E4848C", "mesh-piece"},
            {"GET /photos", "photos"},
            {"GET /spend/lines", "spend-lines"},
            {"GET /sites", "sites"},
            {"GET /depots", "depots"},
            {"GET /trees/T-1301", "tree"},
            {"GET /host-checks", "host-checks"},
            {"GET /proposals", "proposal"},
            {"GET /crews", "crews"},
            {"GET /reels", "reels"},
            {"GET /batches", "batches"},
            {"GET /trail", "trail"},
            {"GET /audit", "audit"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
        desk.services().answers("GET /devices", 200, """
                {"rows":[{"code":"sticky-band","name":"Sticky band under a guard","what":"","needsGuard":true,
                 "question":null,"source":"","cautions":[],"parts":[]}],"next":null}""");
    }

    private String page(Role role, String path) throws Exception {
        var answer = desk.reads(role, path);
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return answer.getContentAsString();
    }

    @Test
    void a_band_shows_its_whole_life_and_a_settled_finding_is_not_shown_as_open() throws Exception {
        String page = page(Role.LEAD, "/bands/B-0001");
        assertThat(page)
                .contains("It should have come off", "rots the bark")
                .contains("Sticky band under a guard", "number 2 from below", "/policies/3", "against LYCMDE")
                .contains("burl on the east side", "closed below", "of crew C-2", "piece MP-0000000009")
                .contains("Material on its tree cost", "Add a photo")
                .contains("So far at least 12 insects were counted.", "A look was due");
        int settled = page.indexOf("settled since");
        assertThat(page.indexOf("stands off 9 mm")).isPositive().isLessThan(settled);
        assertThat(page.indexOf("On tree T-1301 hangs already")).isGreaterThan(settled);
    }

    @Test
    void who_does_not_read_the_books_sees_the_cost_without_a_way_to_every_charge() throws Exception {
        assertThat(page(Role.CREW, "/bands/B-0001"))
                .contains("Material on its tree cost")
                .doesNotContain("Every charge");
    }

    @Test
    void bands_that_must_come_off_are_listed_and_the_filter_goes_to_the_service_and_into_the_files() throws Exception {
        assertThat(page(Role.LEAD, "/bands?due=removal&site=S-MILL&device=sticky-band"))
                .contains("must come off now or soon", "late: ")
                .contains("/bands.xlsx?q=&amp;site=S-MILL&amp;tree=&amp;state=up&amp;device=sticky-band"
                        + "&amp;due=removal");
        assertThat(page(Role.FINANCE, "/bands.csv?due=removal"))
                .startsWith("band_id,tree_id,site_id,state,device,position")
                .contains("B-0001,T-1301,S-MILL,up,sticky-band,2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | 3 | 2 bands should be off already, the first since 1 June; 3 more must come off within 14 days.",
                "1 | 0 | One band should be off already, since 1 June.",
                "0 | 1 | One band must come off soon, by 1 June.",
            })
    void the_alarm_is_a_plain_sentence(long past, long near, String sentence) throws Exception {
        desk.services().answers("GET /bands/removals", 200, """
                {"past":%d,"near":%d,"first":"2026-06-01","noticeDays":14,"source":"house"}""".formatted(past, near));
        desk.services().recorded("GET /inspections", "due.json");
        assertThat(page(Role.LEAD, "/")).contains(sentence, "/bands?due=removal");
    }

    @Test
    void the_home_page_of_others_carries_no_alarm() throws Exception {
        desk.services().answers("GET /bands/removals", 200, """
                {"past":2,"near":0,"first":"2026-06-01","noticeDays":14,"source":"house"}""");
        assertThat(page(Role.DEPOT, "/")).doesNotContain("should be off already");
    }

    @Test
    void pieces_of_mesh_are_listed_with_their_wear_and_where_they_are() throws Exception {
        assertThat(page(Role.CREW, "/mesh-pieces"))
                .contains("3 pieces wait to be used again.", "Nobody has looked yet how worn one of them is.")
                .contains("with Crew Person", "depot RIVER", "1,465 mm");
        assertThat(page(Role.FINANCE, "/mesh-pieces.csv")).contains("MP-SHED,M-0002,1219,,,,,depot:RIVER");
        assertThat(page(Role.CREW, "/mesh-pieces/MP-B2A7E4848C"))
                .contains("It is <b>worn</b>", "worn, still sound", "taken back", "/bands/B-0009");
        assertThat(page(Role.FINANCE, "/mesh-pieces/MP-B2A7E4848C")).doesNotContain("Look at it");
        assertThat(page(Role.DEPOT, "/mesh-pieces/new")).contains("Name on its tag", "depot RIVER");
    }

    @Test
    void the_form_offers_carried_pieces_and_sends_reel_and_length_of_the_chosen_one() throws Exception {
        assertThat(page(Role.CREW, "/bands/new?tree=T-1301"))
                .contains("piece MP-B2A7E4848C, 1,465 mm, worn", "capture=\"environment\"", "number 2 from below");
        desk.services().answers("POST /photos", 200, "{\"photoId\":\"PH-1\"}");
        desk.services().answers("POST /bands/check", 200, "{\"questions\":[]}");
        desk.services().answers("POST /bands", 200, "{\"bandId\":\"B-0001\",\"flags\":[]}");

        var answer = desk.mvc()
                .perform(multipart("/bands")
                        .file(new MockMultipartFile("photo", "p.jpg", "image/jpeg", new byte[] {1, 2, 3}))
                        .param("commandId", COMMAND)
                        .param("photoCommandId", "019a0000-0000-7000-8000-0000000000d2")
                        .param("bandId", "B-0001")
                        .param("treeId", "T-1301")
                        .param("siteId", "S-MILL")
                        .param("crewId", "C-2")
                        .param("personId", "P-CREW")
                        .param("device", "sticky-band")
                        .param("position", "2")
                        .param("deviation", "burl")
                        .param("guardClosedBelow", "no")
                        .param("tapeReel", "R-0001")
                        .param("tapeLength", "1350")
                        .param("tapeLengthUnit", "mm")
                        .param("meshPiece", "MP-B2A7E4848C")
                        .param("meshReel", "")
                        .param("meshLength", "1500")
                        .param("meshLengthUnit", "mm")
                        .with(user(RunningDesk.signedIn(Role.CREW)))
                        .with(csrf()))
                .andReturn()
                .getResponse();

        assertThat(answer.getRedirectedUrl()).isEqualTo("/bands/B-0001");
        assertThat(desk.services().last("POST").body())
                .contains("\"meshPiece\":\"MP-B2A7E4848C\"", "\"reelId\":\"M-0001\"", "\"length\":\"1465 mm\"")
                .contains("\"photos\":[\"PH-1\"]", "\"position\":2", "\"deviation\":\"burl\"")
                .contains("\"guardClosedBelow\":false", "\"device\":\"sticky-band\"");
    }

    @Test
    void a_piece_is_graded_and_scrap_says_where_it_goes() throws Exception {
        desk.services().answers("POST /mesh-pieces/MP-B2A7E4848C/grade", 200, "{\"pieceId\":\"MP-B2A7E4848C\"}");
        var answer = desk.sends(
                Role.CREW,
                "/mesh-pieces/MP-B2A7E4848C/grade",
                "commandId",
                COMMAND,
                "wear",
                "worn",
                "length",
                "140",
                "lengthUnit",
                "cm");
        assertThat(answer.getRedirectedUrl()).isEqualTo("/mesh-pieces/MP-B2A7E4848C");
        assertThat(desk.services().last("POST").body()).contains("\"wear\":\"worn\"", "\"length\":\"140 cm\"");
    }
}
