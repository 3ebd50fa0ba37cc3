package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;

/** The pages about buying, from recorded answers, and what their forms send on. */
class PurchasingPagesTest {
    private static final String COMMAND = "0197b9a0-0000-7000-8000-0000000000a1";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"/items", "items"},
            {"/depots", "depots"},
            {"/suppliers", "suppliers"},
            {"/suppliers/HOLM", "supplier"},
            {"/quotes", "quotes"},
            {"/purchases", "orders"},
            {"/purchases/PO-001", "order"},
            {"/deliveries", "deliveries"},
            {"/deliveries/D-001", "delivery"},
            {"/deliveries/numbers", "numbers"},
            {"/labels/sheets", "sheets"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/suppliers                         | Holm and daughters       | Register a supplier",
                "/suppliers/HOLM                    | USD 35.01 from 10        | 50.29 m",
                "/orders                            | something still to come  | USD 280.08",
                "/orders/PO-001                     | 10 × reel                | 402.34 m",
                "/orders/new                        | choose who to order from | Holm and daughters",
                "/orders/new?supplier=HOLM          | in multiples of 2        | USD 38.50 from 4",
                "/deliveries                        | One reel or batch is     | Receive against order",
                "/deliveries/D-001                  | expected 50.292 m        | L 4711",
                "/deliveries/new?order=PO-001       | HOLM-0010                | 8 × reel of 50.29 m",
                "/deliveries/new?supplier=HOLM      | HOLM-0008                | Each row is one reel",
                "/labels?reel=HOLM-0001             | HOLM-0001                | single label, mm 62 × 29",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        MockHttpServletResponse answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first);
        assertThat(answer.getContentAsString()).contains(second);
    }

    @ParameterizedTest
    @ValueSource(strings = {"suppliers", "orders", "deliveries"})
    void every_list_comes_out_as_a_file(String list) throws Exception {
        assertThat(desk.reads(Role.FINANCE, "/" + list + ".csv").getContentAsString())
                .contains("HOLM");
        assertThat(desk.reads(Role.FINANCE, "/" + list + ".xlsx").getStatus()).isEqualTo(200);
    }

    @Test
    void what_will_run_out_is_ordered_in_whole_packs_of_the_only_one_who_sells_it() throws Exception {
        String page = desk.reads(Role.LEAD, "/orders/new?material=TAPE-127&depot=RIVER&quantity=251460")
                .getContentAsString();

        // 251.46 m are five reels of 50.292 m; they are sold in pairs, so six.
        assertThat(page).containsPattern("name=\"units-1\"[^>]*value=\"6\"");
    }

    @Test
    void the_page_of_what_to_order_counts_what_is_coming_and_leads_to_a_filled_order() throws Exception {
        desk.services().recorded("GET /reorder-points", "reorder-points.json");

        // 233,900 + 18,200 x 9 = 397,700; on hand 91,440 and on order 50,292, so 255,968 mm are proposed.
        assertThat(desk.reads(Role.LEAD, "/reorder").getContentAsString())
                .contains("50.29 m", "/orders/new?material=TAPE-127&amp;depot=RIVER&amp;quantity=255968");
    }

    @Test
    void an_order_sends_quotes_and_codes_of_the_trade_and_no_prices_of_its_own() throws Exception {
        desk.services().answers("POST /purchases", 200, "{}");
        MockHttpServletResponse answer = desk.sends(
                Role.DEPOT,
                "/orders",
                "commandId",
                COMMAND,
                "purchaseId",
                "po-001",
                "supplierId",
                "HOLM",
                "depotId",
                "RIVER",
                "quote",
                "1",
                "units-1",
                "10",
                "handMaterial",
                "PIN",
                "handUnits",
                "5",
                "handUnit",
                "pack",
                "handContent",
                "100",
                "handPrice",
                "4.50",
                "handPriceCurrency",
                "USD",
                "grant",
                "G-1");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/orders/PO-001");
        assertThat(desk.services().last("POST").body())
                .contains("\"quote\":1,\"units\":10,\"grant\":\"G-1\"")
                .contains("\"unitCode\":\"C62\"", "\"packageCode\":\"PK\"", "\"content\":\"100\"", "\"minor\":450");
    }

    @Test
    void only_rows_in_which_something_was_measured_are_received_and_the_lot_of_all_is_for_each() throws Exception {
        desk.services().answers("POST /deliveries", 200, "{}");
        MockHttpServletResponse answer = receives("50.292");

        assertThat(answer.getRedirectedUrl()).isEqualTo("/deliveries/D-001");
        assertThat(desk.services().last("POST").body())
                .contains("\"purchaseLine\":1", "\"statedUnits\":3", "\"accept\":true")
                .contains("{\"reelId\":\"HOLM-0003\",\"length\":\"50.292 m\",\"width\":\"127 mm\",\"lot\":\"L 4711\","
                        + "\"condition\":\"SOUND\"}")
                .contains("\"reelId\":\"OWN-7\",\"length\":\"49 m\",\"width\":\"127 mm\",\"lot\":\"L 9\"")
                .contains("\"batches\":[{\"batchId\":\"HOLM-0006\",\"pieces\":498,\"condition\":\"SOUND\"}]")
                .doesNotContain("HOLM-0005");
    }

    @Test
    void a_delivery_that_is_refused_comes_back_with_everything_that_was_typed() throws Exception {
        desk.services().answers("POST /deliveries", 409, """
                {"type":"/problems/reel-already-received","title":"Reel already received","status":409,
                 "detail":"Reel [OWN-7] was received before."}""");
        String page = receives("50.292").getContentAsString();

        assertThat(page).contains("Reel [OWN-7] was received before.", "value=\"OWN-7\"", "value=\"50.292\"", "L 9");
    }

    @Test
    void accepting_and_sending_back_name_what_was_chosen() throws Exception {
        desk.services().answers("POST /deliveries/D-001/send-back", 200, "{}");
        desk.sends(
                Role.DEPOT,
                "/deliveries/D-001/send-back",
                "commandId",
                COMMAND,
                "key",
                "reel/HOLM-0002",
                "bin",
                "",
                "reason",
                "edge crushed");

        assertThat(desk.services().last("POST").body())
                .contains("\"keys\":[\"reel/HOLM-0002\"]", "\"reason\":\"edge crushed\"")
                .doesNotContain("bin");
    }

    @Test
    void labels_are_passed_on_as_they_come() throws Exception {
        desk.services().answers("GET /labels.pdf", 200, "%PDF-1.7 labels");
        MockHttpServletResponse answer =
                desk.reads(Role.CREW, "/labels.pdf?reel=HOLM-0001 HOLM-0002&sheet=letter-3x10&start=5");

        assertThat(answer.getContentType()).isEqualTo("application/pdf");
        assertThat(answer.getContentAsString()).startsWith("%PDF-1.7");
        assertThat(desk.services().last("GET").query())
                .contains("reel=HOLM-0001,HOLM-0002", "sheet=letter-3x10", "start=5");
    }

    private MockHttpServletResponse receives(String first) throws Exception {
        return desk.sends(
                Role.DEPOT,
                "/deliveries",
                "commandId",
                COMMAND,
                "deliveryId",
                "d-001",
                "purchaseId",
                "PO-001",
                "depotId",
                "RIVER",
                "lengthUnit",
                "m",
                "widthUnit",
                "mm",
                "costCurrency",
                "USD",
                "accept",
                "yes",
                "lineKey",
                "1",
                "lineOrder",
                "1",
                "lineMaterial",
                "TAPE-127",
                "lineUnits",
                "",
                "linePaper",
                "3",
                "lineCost",
                "",
                "lineLot",
                "L 4711",
                "lineExpires",
                "",
                "lineWidth",
                "127",
                "lineKey",
                "2",
                "lineOrder",
                "2",
                "lineMaterial",
                "PIN FASTENER",
                "lineUnits",
                "5",
                "linePaper",
                "",
                "lineCost",
                "",
                "lineLot",
                "",
                "lineExpires",
                "",
                "lineWidth",
                "",
                "rowLine",
                "1",
                "rowId",
                "HOLM-0003",
                "rowQuantity",
                first,
                "rowLot",
                "",
                "rowExpires",
                "",
                "rowCondition",
                "SOUND",
                "rowLine",
                "1",
                "rowId",
                "OWN-7",
                "rowQuantity",
                "49",
                "rowLot",
                "L 9",
                "rowExpires",
                "",
                "rowCondition",
                "DAMAGED",
                "rowLine",
                "1",
                "rowId",
                "HOLM-0005",
                "rowQuantity",
                "",
                "rowLot",
                "",
                "rowExpires",
                "",
                "rowCondition",
                "SOUND",
                "rowLine",
                "2",
                "rowId",
                "HOLM-0006",
                "rowQuantity",
                "498",
                "rowLot",
                "",
                "rowExpires",
                "",
                "rowCondition",
                "SOUND");
    }
}
