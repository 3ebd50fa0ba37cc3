package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;

/** The form about freight and duty looks first and becomes a wish when its button says so. */
class LandedCostFormsTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000003";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_service_answers() {
        String[][] recordings = {
            {"GET /invoices", "invoices"},
            {"GET /invoices/X", "invoice"},
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
    void an_amount_is_looked_at_before_it_is_spread() throws Exception {
        String page = spreads("look").getContentAsString();
        assertThat(page).contains("This is what each line would bear.", "TAPE-REED", "Spread it");
        assertThat(desk.services().last("POST").path()).isEqualTo("/landed-costs/preview");

        desk.services().answers("POST /landed-costs", 200, "{}");
        assertThat(spreads("spread").getRedirectedUrl()).isEqualTo("/landed-costs/LC-1");
        assertThat(desk.services().last("POST").body())
                .contains("\"amount\":{\"minor\":2500,\"currency\":\"USD\"}", "\"deliveries\":[\"D-1\"]")
                .contains("\"basis\":\"VALUE\"", "\"what\":\"FREIGHT\"", "\"landedCostId\":\"LC-1\"");
    }

    private MockHttpServletResponse spreads(String act) throws Exception {
        return desk.sends(
                Role.FINANCE,
                "/landed-costs",
                "commandId",
                COMMAND,
                "landedCostId",
                "LC-1",
                "what",
                "FREIGHT",
                "basis",
                "VALUE",
                "amount",
                "25",
                "amountCurrency",
                "USD",
                "delivery",
                "D-1",
                "act",
                act);
    }
}
