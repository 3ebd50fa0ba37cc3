package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;

/** Forms about invoices and freight become wishes, and come back with everything typed when they are refused. */
class InvoiceFormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000003";
    private static final String ID = "INV-207FE48C7F10C26E";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_service_answers() {
        String[][] recordings = {
            {"GET /invoices", "invoices"},
            {"GET /invoices/" + ID, "invoice"},
            {"GET /invoices/order-lines", "invoice-order-lines"},
            {"GET /suppliers", "invoice-suppliers"},
            {"POST /invoices/preview", "invoice-preview"},
            {"GET /landed-costs", "landed-costs"},
            {"GET /landed-costs/LC-1", "landed-cost"},
            {"GET /landed-costs/deliveries", "landed-deliveries"},
            {"POST /landed-costs/preview", "landed-preview"},
            {"GET /write-downs", "write-downs"},
            {"GET /tolerances", "tolerances"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    @Test
    void a_file_goes_to_the_service_as_it_is_and_the_page_shows_exactly_what_would_be_stored() throws Exception {
        byte[] bytes = "number,line\n".getBytes(StandardCharsets.UTF_8);
        var request = multipart("/invoices/file").file(new MockMultipartFile("file", "a-17.csv", "text/csv", bytes));

        String page = desk.mvc()
                .perform(request.with(user(RunningDesk.signedIn(Role.FINANCE))).with(csrf()))
                .andReturn()
                .getResponse()
                .getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains(Base64.getEncoder().encodeToString(bytes), "\"source\":\"a-17.csv\"");
        assertThat(page)
                .contains("This is what would be stored: <b>USD 439.00</b>", "8 reels at 49.50", "price differs")
                .contains("<option value=\"GOODS|PO-REED|1\" selected=\"selected\">");
    }

    @Test
    void what_was_shown_is_kept_with_what_each_line_bills() throws Exception {
        desk.services().answers("POST /invoices", 200, """
                {"invoiceId":"INV-207FE48C7F10C26E","payable":{"minor":43900,"currency":"USD"},"findings":[]}""");

        MockHttpServletResponse answer = keeps();

        assertThat(answer.getRedirectedUrl()).isEqualTo("/invoices/" + ID);
        assertThat(desk.services().last("POST").body())
                .contains("\"document\":{\"number\":\"A-17\",\"price\":\"49.50\"}", "\"supplierId\":\"S-REED\"")
                .contains("{\"line\":\"1\",\"use\":\"GOODS\",\"purchaseId\":\"PO-REED\",\"purchaseLine\":1,"
                        + "\"priceOnly\":false}")
                .contains("{\"line\":\"2\",\"use\":\"FREIGHT\",\"priceOnly\":false}");
    }

    @Test
    void a_paper_that_came_before_is_shown_again_with_the_refusal() throws Exception {
        desk.services().answers("POST /invoices", 409, """
                {"type":"/problems/invoice-registered-before","title":"Invoice registered before","status":409,
                 "detail":"Invoice [A-17] came before and is kept as INV-1."}""");

        String page = keeps().getContentAsString();

        assertThat(page).contains("came before and is kept as INV-1", "value=\"" + COMMAND + "\"");
    }

    @Test
    void rows_by_hand_become_rows_of_the_file_and_empty_ones_are_left_out() throws Exception {
        desk.services().answers("POST /invoices/preview", 422, """
                {"type":"/problems/unreadable-invoice","title":"Unreadable invoice","status":422,
                 "detail":"row 1, price: [x] is not a number."}""");

        String page = desk.sends(
                        Role.FINANCE,
                        "/invoices/hand",
                        ("supplierId,S-REED,number,A-18,currency,USD,issued_on,2026-05-19,"
                                        + "what,goods,line,1,item,Tape,unit,XRL,quantity,8,price,x,"
                                        + "what,goods,line,,item,,unit,XRL,quantity,,price,")
                                .split(",", -1))
                .getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains("\"number\":\"A-18\"", "\"item\":\"Tape\"", "\"supplierId\":\"S-REED\"")
                .containsOnlyOnce("\"unit\":\"XRL\"");
        assertThat(page).contains("row 1, price: [x] is not a number.", "value=\"A-18\"", "value=\"Tape\"");
    }

    @Test
    void the_button_says_whether_a_line_is_held_or_how_it_is_settled() throws Exception {
        String no = "{\"title\":\"No\",\"status\":409,\"detail\":\"d\"}";
        desk.services().answers("POST /invoices/" + ID + "/hold", 409, no);
        desk.services().answers("POST /invoices/" + ID + "/settle", 409, no);

        decides("HOLD");
        assertThat(desk.services().last("POST").path()).endsWith("/hold");
        assertThat(desk.services().last("POST").body())
                .doesNotContain("\"how\"")
                .contains("\"line\":\"1\"");
        decides("PAY_RECEIVED");
        assertThat(desk.services().last("POST").body())
                .contains("\"how\":\"PAY_RECEIVED\"", "\"reason\":\"two are missing\"");
    }

    private MockHttpServletResponse keeps() throws Exception {
        return desk.sends(
                Role.FINANCE,
                "/invoices",
                "commandId",
                COMMAND,
                "supplierId",
                "S-REED",
                "source",
                "a-17.csv",
                "document",
                "{\"number\":\"A-17\",\"price\":\"49.50\"}",
                "look",
                "{\"source\":\"a-17.csv\"}",
                "lineId",
                "1",
                "bills",
                "GOODS|PO-REED|1",
                "quantityInBooks",
                "",
                "lineId",
                "2",
                "bills",
                "FREIGHT",
                "quantityInBooks",
                "");
    }

    private void decides(String how) throws Exception {
        desk.sends(
                Role.FINANCE,
                "/invoices/" + ID + "/decide",
                "commandId",
                COMMAND,
                "line",
                "1",
                "reason",
                "two are missing",
                "how",
                how);
    }
}
