package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;

/** What is left out of a form at the counter is asked about: a line of a transfer, the pieces of a batch. */
class ArrivalAndShelfFormsTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_service_answers() {
        String[][] recordings = {
            {"/depots", "depots"},
            {"/batches/F-001", "batch"},
            {"/bins", "bins"},
            {"/set-aside", "set-aside"},
            {"/transfers/TR-1", "transfer-on-the-way"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''   | ''   | ''    | R-0007 was left empty. | F-004 was left empty.",
                "39.5 | ''   | R-0007| R-0007 has a quantity and is ticked | F-004 was left empty.",
            })
    void a_line_that_says_nothing_or_two_things_is_asked_about_and_nothing_is_sent(
            String measured, String counted, String absent, String first, String second) throws Exception {
        String page = arrives(measured, counted, absent).getContentAsString();

        assertThat(page).contains(first, second);
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @ParameterizedTest
    @CsvSource({"0,R-0007", "'0,0',F-004", "39.5,F-004"})
    void a_nought_or_a_tick_says_that_it_did_not_come(String measured, String absent) throws Exception {
        desk.services().answers("POST /transfers/TR-1/arrive", 200, "{}");
        desk.services().recorded("GET /transfers/TR-1", "transfer-came.json");

        var answer = arrives(measured, "0", absent);

        assertThat(answer.getRedirectedUrl()).isEqualTo("/transfers/TR-1");
        assertThat(desk.services().last("POST").body())
                .contains("\"batches\":[]")
                .contains(measured.startsWith("0") ? "\"reels\":[]" : "\"measured\":\"39.5 m\"");
    }

    @Test
    void what_was_measured_stands_in_the_form_that_comes_back() throws Exception {
        String page = arrives("39.5", "", "").getContentAsString();

        assertThat(page).contains("value=\"39.5\"", "F-004 was left empty.").doesNotContain("R-0007 was left empty");
    }

    @Test
    void nothing_is_ticked_as_not_come_beforehand() throws Exception {
        assertThat(desk.reads(Role.DEPOT, "/transfers/TR-1").getContentAsString())
                .contains("R-0007 did not come", "F-004 did not come")
                .doesNotContain("checked");
    }

    private MockHttpServletResponse arrives(String measured, String counted, String absent) throws Exception {
        return desk.sends(
                Role.DEPOT,
                "/transfers/TR-1/arrive",
                "reelId",
                "R-0007",
                "measured",
                measured,
                "measuredUnit",
                "m",
                "batchId",
                "F-004",
                "counted",
                counted,
                "absent",
                absent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/bins/put", "/set-aside"})
    void a_batch_without_a_number_of_pieces_is_asked_about(String path) throws Exception {
        String page = puts(path, "f-001", "", "").getContentAsString();

        assertThat(page)
                .contains("F-001 is a batch of fasteners, not a reel.", "400 pieces of it, depot RIVER.")
                .contains("Take all that is there");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/bins/put  | F-001  | 120 | ''  | \"batchId\":\"F-001\"  | \"pieces\":120",
                "/bins/put  | F-001  | ''  | all | \"batchId\":\"F-001\"  | \"depotId\":\"RIVER\"",
                "/bins/put  | R-0009 | ''  | ''  | \"reelId\":\"R-0009\"  | \"mark\":\"A-03\"",
                "/set-aside | F-001  | ''  | all | \"batchId\":\"F-001\"  | \"reason\":\"damaged\"",
                "/set-aside | R-0009 | ''  | ''  | \"reelId\":\"R-0009\"  | \"reason\":\"damaged\"",
            })
    void a_label_goes_as_what_it_is(String path, String label, String pieces, String take, String first, String second)
            throws Exception {
        desk.services().answers("POST " + path, 200, "{\"place\":\"depot:RIVER/A-03\",\"quantity\":120}");
        desk.services().answers("GET /batches/R-0009", 404, "{\"title\":\"Unknown\",\"status\":404}");

        assertThat(puts(path, label, pieces, take).getStatus()).isEqualTo(302);
        assertThat(desk.services().last("POST").body()).contains(first, second);
    }

    private MockHttpServletResponse puts(String path, String label, String pieces, String take) throws Exception {
        return desk.sends(
                Role.DEPOT,
                path,
                "depotId",
                "RIVER",
                "label",
                label,
                "mark",
                "A-03",
                "pieces",
                pieces,
                "take",
                take,
                "reason",
                "damaged");
    }
}
