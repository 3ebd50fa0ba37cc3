package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages about moving, slitting and setting up, from recorded answers, and what their forms pass on. */
class MovingPagesTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_service_answers() {
        String[][] recordings = {
            {"/items", "items-wide"},
            {"/depots", "depots"},
            {"/crews", "crews"},
            {"/reels", "reels"},
            {"/reels/W-0002", "reel-wide"},
            {"/batches", "batches"},
            {"/batches/F-001", "batch"},
            {"/bins", "bins"},
            {"/bins/RIVER/A-03", "bin"},
            {"/vehicles", "vehicles"},
            {"/transfers", "transfers"},
            {"/transfers/TR-1", "transfer-on-the-way"},
            {"/transfers/TR-2", "transfer-came"},
            {"/set-aside", "set-aside"},
            {"/slittings", "slittings"},
            {"/slittings/SL-1", "slitting"},
            {"/slittings/labels", "strip-labels"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/transfers                | carried by                | called off",
                "/transfers                | arrived short             | TR-1",
                "/transfers/new            | Scan every label          | vehicle Green truck",
                "/transfers/TR-1           | Confirm the arrival       | F-004",
                "/transfers/TR-2           | 39.50 m                   | the rest is missing",
                "/bins                     | 2 bins are marked.        | 58,120 mm stored",
                "/bins/RIVER/A-03          | 3 things lie in it.       | 480 pieces",
                "/vehicles                 | Green truck               | 25,000 mm stored",
                "/set-aside                | adhesive dry at the edge  | Release it",
                "/slittings                | W-0001                    | USD 120.00",
                "/slittings/SL-1           | 3 strips and 17 mm of edge trim. | 7,620,000 mm²",
                "/slittings/new            | Scan the wide reel.       | River yard",
                "/slittings/new?reelId=W-0002&depotId=RIVER | 381 mm wide and has 50.00 m | Band tape, 127 mm",
                "/slittings/new?reelId=W-0002&depotId=RIVER&item=TAPE-127&strips=3 | nothing left over. | Cut-proof gloves",
                "/slittings/new?reelId=W-0002&depotId=RIVER&item=TAPE-127&strips=2&length=12.5&lengthUnit=m"
                        + " | 2 strips of 12.50 m each, and 127 mm of edge trim. | W-0002-B",
                "/set-up/items             | Register an item          | Wide tape",
                "/set-up/depots            | A-03                      | Mark a bin",
                "/set-up/crews             | Heron                     | Green truck",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "transfers",
                "bins",
                "vehicles",
                "set-aside",
                "slittings",
                "set-up/items",
                "set-up/depots",
                "set-up/crews"
            })
    void every_list_comes_out_as_csv(String list) throws Exception {
        var answer = desk.reads(Role.LEAD, "/" + list + ".csv");

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString().lines().count())
                .as("a header and at least one row")
                .isGreaterThan(1);
    }

    @Test
    void strips_too_wide_for_the_reel_are_told_before_anything_is_cut() throws Exception {
        desk.services().answers("GET /slittings/labels", 200, """
                {"labels":["W-0002-A","W-0002-B","W-0002-C","W-0002-D"]}""");

        String page = desk.reads(Role.DEPOT, "/slittings/new?reelId=W-0002&depotId=RIVER&item=TAPE-127&strips=4")
                .getContentAsString();

        // By hand: four strips of 127 mm are 508 mm, 127 mm more than 381 mm.
        assertThat(page)
                .contains("Together they are 127 mm wider than the reel.")
                .doesNotContain("It is slit");
    }

    @Test
    void a_slitting_is_passed_on_with_its_strips_and_trim() throws Exception {
        desk.services().answers("POST /slittings", 200, "{}");
        var answer = desk.sends(
                Role.DEPOT,
                "/slittings",
                "commandId",
                "00000000-0000-7000-8000-000000000001",
                "slittingId",
                "SL-1",
                "reelId",
                "w-0002",
                "depotId",
                "RIVER",
                "trimMm",
                "127",
                "label",
                "W-0002-A",
                "stripItem",
                "TAPE-127",
                "label",
                "W-0002-B",
                "stripItem",
                "TAPE-127");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/slittings/SL-1");
        assertThat(desk.services().last("POST").body())
                .contains("\"reelId\":\"W-0002\"", "\"trim\":\"127 mm\"", "W-0002-A", "W-0002-B")
                .doesNotContain("\"length\"");
    }

    @Test
    void scanned_labels_are_sent_as_reels_and_pieces_of_batches() throws Exception {
        desk.services().answers("POST /transfers", 200, "{}");
        desk.services().answers("GET /batches/R-0007", 404, "{\"title\":\"Unknown\",\"status\":404}");
        var answer = desk.sends(
                Role.DEPOT,
                "/transfers",
                "transferId",
                "TR-1",
                "from",
                "depot:RIVER",
                "to",
                "depot:HILL",
                "carrier",
                "P-CREW",
                "labels",
                "r-0007\nf-004=200");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/transfers/TR-1");
        assertThat(desk.services().last("POST").body())
                .contains("\"reels\":[\"R-0007\"]", "\"batchId\":\"F-004\"", "\"pieces\":200");
    }

    @Test
    void what_came_is_passed_on_measured_and_counted() throws Exception {
        desk.services().answers("POST /transfers/TR-2/arrive", 200, "{}");
        var answer = desk.sends(
                Role.DEPOT,
                "/transfers/TR-2/arrive",
                "reelId",
                "R-0007",
                "measured",
                "39.5",
                "measuredUnit",
                "m",
                "batchId",
                "F-004",
                "counted",
                "",
                "absent",
                "F-004");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/transfers/TR-2");
        assertThat(desk.services().last("POST").body()).contains("\"measured\":\"39.5 m\"", "\"batches\":[]");
    }

    @Test
    void a_refused_crew_comes_back_with_what_was_typed() throws Exception {
        String page = desk.sends(Role.LEAD, "/set-up/crews", "crewId", "C-NEW", "name", "Newt", "depotId", "RIVER")
                .getContentAsString();

        assertThat(page).contains("Nobody is ticked.", "value=\"Newt\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/set-up/items", "/set-up/depots", "/transfers/new", "/slittings/new"})
    void crews_and_finance_do_not_set_up_or_send(String path) throws Exception {
        assertThat(desk.reads(Role.CREW, path).getStatus()).isEqualTo(403);
        assertThat(desk.reads(Role.FINANCE, path).getStatus()).isEqualTo(403);
    }
}
