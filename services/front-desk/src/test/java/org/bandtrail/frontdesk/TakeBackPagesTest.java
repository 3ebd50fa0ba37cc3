package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was done a moment ago at the shelves is offered to be taken back; labels of batches are asked about. */
class TakeBackPagesTest {
    private static final String AT = "2026-05-04T08:00:00.123Z";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_service_answers() {
        String[][] recordings = {
            {"/depots", "depots"},
            {"/batches/F-001", "batch"},
            {"/bins", "bins"},
            {"/vehicles", "vehicles"},
            {"/set-aside", "set-aside"},
            {"/transfers/TR-1", "transfer-on-the-way"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
        desk.services().answers("GET /batches/R-0009", 404, "{\"title\":\"Unknown\",\"status\":404}");
    }

    @ParameterizedTest
    @CsvSource({
        "/bins/put, /bins, label, R-0009, reel",
        "/set-aside, /set-aside, label, F-001, batch",
        "/vehicles/load, /vehicles, labels, R-0009, reel",
        "/vehicles/unload, /vehicles, labels, F-001, batch",
    })
    void the_page_after_an_act_offers_to_take_it_back(
            String path, String page, String field, String label, String named) throws Exception {
        String told = path.replace("/vehicles", "/vehicles/V-1");
        desk.services().answers("POST " + told, 200, """
                {"place":"depot:RIVER/A-03","quantity":120,"vehicleId":"V-1","at":"%s"}""".formatted(AT));
        var sent = desk.mvc()
                .perform(post(path)
                        .with(user(RunningDesk.signedIn(Role.DEPOT)))
                        .with(csrf())
                        .param("depotId", "RIVER")
                        .param("vehicleId", "V-1")
                        .param(field, label)
                        .param("take", "all"))
                .andReturn();
        assertThat(sent.getResponse().getRedirectedUrl()).isEqualTo(page);

        String shown = desk.mvc()
                .perform(get(page).with(user(RunningDesk.signedIn(Role.DEPOT))).flashAttrs(sent.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();

        assertThat(shown)
                .contains("Take it back", "name=\"" + named + "\" value=\"" + label + "\"")
                .contains("name=\"at\" value=\"" + AT + "\"");
        assertThat(desk.reads(Role.DEPOT, page).getContentAsString()).doesNotContain("Take it back");
    }

    @Test
    void taking_back_is_passed_on_with_the_moment_of_the_move() throws Exception {
        desk.services().answers("POST /take-backs", 200, """
                {"lines":[{"id":"R-0009","place":"depot:RIVER/A-03"}]}""");

        var answer = desk.sends(
                Role.DEPOT, "/take-back", "commandId", "C-1", "reel", "R-0009", "at", AT, "page", "/vehicles");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/vehicles");
        assertThat(desk.services().last("POST").body())
                .contains("\"reels\":[\"R-0009\"]", "\"batches\":[]", "\"at\":\"" + AT + "\"", "\"commandId\":\"C-1\"");
    }

    @Test
    void what_was_moved_on_since_is_said_with_its_reason() throws Exception {
        desk.services().answers("POST /take-backs", 409, """
                {"title":"Moved since","status":409,"detail":"[R-0009] was moved again since: it was loaded."}""");

        var answer = desk.sends(Role.DEPOT, "/take-back", "reel", "R-0009", "at", AT, "page", "/bins");

        assertThat(answer.getStatus()).isEqualTo(409);
        assertThat(answer.getContentAsString()).contains("was moved again since: it was loaded.");
    }

    @Test
    void nobody_is_led_to_another_page_than_those_of_the_shelves() throws Exception {
        var answer = desk.sends(Role.DEPOT, "/take-back", "reel", "R-0009", "at", AT, "page", "//elsewhere.example");

        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @ParameterizedTest
    @CsvSource({"/vehicles/load, RIVER", "/transfers, depot:RIVER"})
    void a_bare_label_of_a_batch_is_asked_about_among_reels(String path, String from) throws Exception {
        String page = desk.sends(
                        Role.DEPOT,
                        path,
                        "depotId",
                        "RIVER",
                        "from",
                        from,
                        "vehicleId",
                        "V-1",
                        "labels",
                        "R-0009\nf-001")
                .getContentAsString();

        assertThat(page)
                .contains("How many pieces?", "F-001: the books have 400 pieces of it, depot RIVER.")
                .contains("Take all that is there of these batches")
                .doesNotContain("R-0009: the books");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "F-001     | all | {\"batchId\":\"F-001\"}",
                "F-001=120 | ''  | \"pieces\":120",
            })
    void a_batch_goes_with_the_pieces_that_were_said(String label, String take, String passedOn) throws Exception {
        desk.services().answers("POST /transfers", 200, "{}");

        var answer = desk.sends(
                Role.DEPOT,
                "/transfers",
                "transferId",
                "TR-1",
                "from",
                "depot:RIVER",
                "labels",
                "R-0009 " + label,
                "take",
                take);

        assertThat(answer.getRedirectedUrl()).isEqualTo("/transfers/TR-1");
        assertThat(desk.services().last("POST").body()).contains("\"reels\":[\"R-0009\"]", passedOn);
    }
}
