package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Forms become commands for the right service, and come back with everything typed when a service says no. */
class FormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000001";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_know_items_depots_and_crews() {
        desk.services().recorded("GET /items", "items.json");
        desk.services().recorded("GET /depots", "depots.json");
        desk.services().recorded("GET /crews", "crews.json");
        desk.services().recorded("GET /reels", "reels.json");
        desk.services().recorded("GET /batches", "batches.json");
    }

    @Test
    void a_received_reel_becomes_a_command_with_length_as_text_and_money_in_minor_units() throws Exception {
        desk.services().answers("POST /reels", 200, "{\"reelId\":\"R-0001\",\"lengthMm\":45720}");
        desk.services().recorded("GET /reels/R-0001", "reel.json");

        var answer = receivesReel("50", "yd", "38.50");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/reels/R-0001");
        assertThat(desk.services().last("POST").body())
                .contains("\"commandId\":\"" + COMMAND + "\"", "\"length\":\"50 yd\"")
                .contains("\"cost\":{\"minor\":3850,\"currency\":\"USD\"}", "\"happenedAt\":\"2026-06-12T14:30:00Z\"");
        assertThat(desk.services().last("POST").person()).isEqualTo("P-DEPOT");
    }

    @Test
    void a_refusal_is_shown_in_the_words_of_the_service_and_nothing_typed_is_lost() throws Exception {
        desk.services().answers("POST /reels", 409, """
                {"type":"/problems/reel-known","title":"This reel is received already","status":409,
                 "detail":"Reel [R-0001] came in on 2 May. Give this one another name."}""");

        String page = receivesReel("50", "yd", "38.50").getContentAsString();

        assertThat(page)
                .contains("This reel is received already", "Give this one another name.")
                .contains("value=\"r-0001\"", "value=\"50\"", "value=\"38.50\"", "value=\"" + COMMAND + "\"")
                .contains("<option value=\"yd\" selected=\"selected\">");
    }

    @Test
    void an_amount_that_is_no_money_is_asked_again_without_troubling_a_service() throws Exception {
        String page = receivesReel("50", "yd", "a lot").getContentAsString();

        assertThat(page).contains("is not an amount of money", "value=\"a lot\"");
        assertThat(desk.services().asked()).noneMatch(asked -> asked.method().equals("POST"));
    }

    @Test
    void a_probable_slip_is_asked_about_once_and_stored_when_confirmed() throws Exception {
        desk.services().recorded("GET /trees/T-1301", "tree.json");
        desk.services().recorded("GET /host-checks", "host-checks.json");
        desk.services().recorded("GET /proposals", "proposal.json");
        desk.services().answers("POST /bands/check", 200, """
                {"questions":[{"field":"tape.length","value":"13 m","perhaps":"1.3 m",
                 "message":"Tape [13 m] goes ten times round this trunk. Perhaps 1.3 m."}]}""");
        desk.services().answers("POST /bands", 200, "{\"bandId\":\"B-1\",\"flags\":[]}");
        desk.services().recorded("GET /bands/B-1", "band.json");

        String asked = fits("confirmed", "").getContentAsString();
        assertThat(asked).contains("Is this right?", "Perhaps 1.3 m.", "value=\"13\"");
        assertThat(desk.services().asked()).noneMatch(request -> request.path().equals("/bands"));

        assertThat(fits("confirmed", "yes").getRedirectedUrl()).isEqualTo("/bands/B-1");
        assertThat(desk.services().last("POST").body())
                .contains("\"reelId\":\"R-0001\"", "\"length\":\"13 m\"")
                .doesNotContain("mesh");
    }

    @Test
    void only_what_was_measured_is_sent_as_returned() throws Exception {
        desk.services().recorded("POST /returns", "returned.json");

        desk.sends(
                Role.DEPOT,
                "/returns",
                "commandId",
                COMMAND,
                "personId",
                "P-07",
                "depotId",
                "RIVER",
                "reelId",
                "R-0001",
                "measured",
                "3.95",
                "measuredUnit",
                "m",
                "reelId",
                "R-0002",
                "measured",
                "",
                "measuredUnit",
                "m",
                "batchId",
                "F-001",
                "counted",
                "120");

        assertThat(desk.services().last("POST").body())
                .contains("\"reelId\":\"R-0001\"", "\"measured\":\"3.95 m\"")
                .contains("\"batchId\":\"F-001\"", "\"counted\":120")
                .doesNotContain("R-0002");
    }

    private org.springframework.mock.web.MockHttpServletResponse receivesReel(String length, String unit, String cost)
            throws Exception {
        return desk.sends(
                Role.DEPOT,
                "/reels",
                "commandId",
                COMMAND,
                "reelId",
                "r-0001",
                "materialCode",
                "TAPE-127",
                "depotId",
                "RIVER",
                "length",
                length,
                "lengthUnit",
                unit,
                "cost",
                cost,
                "costCurrency",
                "USD",
                "happenedAt",
                "2026-06-12T10:30");
    }

    private org.springframework.mock.web.MockHttpServletResponse fits(String... more) throws Exception {
        return desk.sends(
                Role.CREW,
                "/bands",
                "commandId",
                COMMAND,
                "bandId",
                "B-1",
                "treeId",
                "T-1301",
                "siteId",
                "S-MILL",
                "crewId",
                "C-HERON",
                "personId",
                "P-CREW",
                "tapeReel",
                "r-0001",
                "tapeLength",
                "13",
                "tapeLengthUnit",
                "m",
                more[0],
                more[1]);
    }
}
