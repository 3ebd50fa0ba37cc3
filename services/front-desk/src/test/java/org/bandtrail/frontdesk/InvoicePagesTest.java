package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;

/** Pages about invoices, freight, write-downs and tolerances say what the service said. */
class InvoicePagesTest {
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
            {"GET /variances/prices", "variances-prices"},
            {"GET /variances/uses", "variances-uses"},
            {"GET /tolerances", "tolerances"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/invoices                  | 2 invoices wait                     | Supplier of REED",
                "/invoices                  | credit note                         | USD -7.01",
                "/invoices/INV-207FE48C7F10C26E | 2 lines need | USD 8.00 less. Accept it with a reason",
                "/invoices/INV-207FE48C7F10C26E | 365760 mm                       | 457.20 m",
                "/invoices/INV-207FE48C7F10C26E | nobody ordered it               | Spread what is left",
                "/invoices/new              | UBL 2.1 (XML) or CSV                | Look at it",
                "/landed-costs              | One amount was                      | carrier 4711",
                "/landed-costs/LC-1         | Freight of USD 25.00                | 8 reels and batches",
                "/landed-costs/new          | what the goods cost                 | D-1 from S-REED",
                "/variances                 | USD 20.00 more was paid than quoted. | +USD 9.60",
                "/variances                 | no standard price is known          | 1,040.00 m",
                "/write-downs               | adhesive out of date                | IAS 2, paragraph 9",
                "/tolerances                | 2 % and 5                           | common practice, no source",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        MockHttpServletResponse answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/invoices",
                "/invoices/INV-207FE48C7F10C26E",
                "/landed-costs",
                "/landed-costs/LC-1",
                "/write-downs",
                "/tolerances"
            })
    void a_crew_may_read_but_is_offered_nothing_to_change(String path) throws Exception {
        MockHttpServletResponse answer = desk.reads(Role.CREW, path);

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString()).doesNotContain("method=\"post\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/invoices", "/invoices/hand", "/invoices/look", "/invoices/X/approve", "/invoices/X/decide",
                "/invoices/X/bills", "/invoices/X/withdraw", "/landed-costs", "/landed-costs/X/take-back",
                        "/write-downs",
                "/tolerances"
            })
    void only_finance_and_the_lead_may_write(String path) throws Exception {
        for (Role role : Role.values()) {
            int status = desk.sends(role, path, "commandId", COMMAND, "look", "{}", "supplierId", "S")
                    .getStatus();
            boolean may = role == Role.FINANCE || role == Role.LEAD;
            assertThat(status == 403).as("%s writes %s", role, path).isEqualTo(!may);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/invoices.csv,     invoice_id",
        "/landed-costs.csv, landed_cost_id",
        "/write-downs.csv,  holding",
        "/variances/prices.csv,  month",
        "/variances/uses.csv,  month",
    })
    void lists_come_out_as_csv_and_as_sheets(String path, String header) throws Exception {
        assertThat(desk.reads(Role.FINANCE, path).getContentAsString()).startsWith(header + ",");
        assertThat(desk.reads(Role.FINANCE, path.replace(".csv", ".xlsx")).getContentAsByteArray())
                .startsWith('P', 'K');
    }
}
