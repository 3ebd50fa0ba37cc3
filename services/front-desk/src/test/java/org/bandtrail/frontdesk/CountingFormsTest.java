package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Counting by scanner, and the ways to end what does not add up, as commands for supply-stock. */
class CountingFormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000001";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void supply_stock_answers() {
        desk.services().recorded("GET /depots", "depots.json");
        desk.services().recorded("GET /counts/C-1", "count-counting.json");
        desk.services().recorded("GET /counts/C-2", "count-review.json");
        desk.services().recorded("GET /discrepancies", "discrepancies.json");
    }

    @Test
    void while_it_is_counted_the_page_shows_no_figure_of_the_books() throws Exception {
        String page = desk.reads(Role.DEPOT, "/counts/C-1").getContentAsString();

        assertThat(page)
                .contains("autofocus", "data-next=\"measured\"", "F-001")
                .doesNotContain("45.72", "45720", "books, frozen");
    }

    @Test
    void a_scanned_reel_with_its_length_becomes_a_line_in_its_bin() throws Exception {
        desk.services().answers("POST /counts/C-1/lines", 200, "{\"countId\":\"C-1\"}");

        var answer = desk.sends(
                Role.DEPOT,
                "/counts/C-1/lines",
                "commandId",
                COMMAND,
                "id",
                "F-001",
                "counted",
                "480",
                "bin",
                "a-03",
                "measured",
                "",
                "measuredUnit",
                "m");

        assertThat(answer.getRedirectedUrl()).startsWith("/counts/C-1?bin=a-03");
        assertThat(desk.services().last("POST").body())
                .contains("\"id\":\"F-001\"", "\"counted\":480", "\"place\":\"depot:RIVER/A-03\"", "\"alone\":false")
                .doesNotContain("measured");
    }

    @Test
    void a_scan_without_a_length_is_asked_for_it_and_keeps_the_label() throws Exception {
        String page = desk.sends(Role.DEPOT, "/counts/C-1/lines", "commandId", COMMAND, "id", "R-0002")
                .getContentAsString();

        assertThat(page).contains("Enter what you measured of R-0002", "value=\"R-0002\"");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @Test
    void an_approval_that_is_refused_is_shown_in_the_words_of_the_service() throws Exception {
        desk.services().answers("POST /counts/C-2/approve", 409, """
                {"type":"/problems/second-person-needed","title":"Not done","status":409,
                 "detail":"The differences are worth 1239 minor units; somebody approves who did not count."}""");

        String page = desk.sends(Role.DEPOT, "/counts/C-2/approve", "commandId", COMMAND)
                .getContentAsString();

        assertThat(page).contains("somebody approves who did not count", "left on the shelf");
    }

    @Test
    void whoever_counted_is_not_offered_the_approval_above_the_value() throws Exception {
        String counted = desk.reads(Role.DEPOT, "/counts/C-2").getContentAsString();

        assertThat(counted).contains("You counted here").doesNotContain("bring the books in line</button>");
    }

    @Test
    void a_likely_cause_becomes_a_correcting_move_to_where_the_piece_is() throws Exception {
        desk.services().answers("POST /discrepancies/put-right", 409, """
                {"type":"/problems/not-a-correction","title":"Not done","status":409,"detail":"Puts nothing right."}""");

        String page = desk.sends(
                        Role.DEPOT,
                        "/discrepancies/put-right",
                        "commandId",
                        COMMAND,
                        "material",
                        "reel",
                        "id",
                        "R-0001",
                        "place",
                        "missing:P-07",
                        "through",
                        "tree:T-1302",
                        "other",
                        "R-0011",
                        "reason",
                        "label read wrong")
                .getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains("\"through\":\"tree:T-1302\"", "\"other\":\"R-0011\"", "\"reason\":\"label read wrong\"")
                .doesNotContain("measured");
        assertThat(page).contains("Puts nothing right.");
    }

    @Test
    void what_is_put_back_goes_to_the_chosen_depot_as_measured() throws Exception {
        desk.services().answers("POST /discrepancies/put-right", 200, "{\"id\":\"R-0001\",\"place\":\"missing:P-07\"}");
        desk.services().answers("GET /discrepancies", 200, "{\"rows\":[],\"next\":null}");

        var answer = desk.sends(
                Role.LEAD,
                "/discrepancies/put-right",
                "commandId",
                COMMAND,
                "material",
                "reel",
                "id",
                "R-0001",
                "place",
                "missing:P-07",
                "depotId",
                "RIVER",
                "measured",
                "3.9",
                "measuredUnit",
                "m",
                "reason",
                "under the seat");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/discrepancies");
        assertThat(desk.services().last("POST").body())
                .contains("\"through\":\"depot:RIVER\"", "\"measured\":\"3.9 m\"");
    }
}
