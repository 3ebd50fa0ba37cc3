package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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
                "/tolerances                | 2 % and USD 5.00                    | common practice, no source",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        MockHttpServletResponse answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    /** Digits after the point by ISO 4217, list one: none of the yen, two of the dollar, three of the dinar, four. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "JPY | 2 % and JPY 500    | From <b>JPY 100,000</b>",
                "USD | 2 % and USD 5.00   | From <b>USD 1,000.00</b>",
                "KWD | 2 % and KWD 0.500  | From <b>KWD 100.000</b>",
                "CLF | 2 % and CLF 0.0500 | From <b>CLF 10.0000</b>",
            })
    void limits_read_in_the_minor_digits_of_the_currency_of_the_invoices(String currency, String price, String two)
            throws Exception {
        desk.services().recordedWith("GET /invoices", "invoices.json", "\"USD\"", "\"" + currency + "\"");

        assertThat(desk.reads(Role.LEAD, "/tolerances").getContentAsString()).contains(price, two);
    }

    @Test
    void limits_read_in_every_currency_that_is_used() throws Exception {
        desk.services().recordedWith("GET /invoices", "invoices.json", "701,\n    \"currency\": \"USD\"", """
                701, "currency": "JPY\"""");

        assertThat(desk.reads(Role.LEAD, "/tolerances").getContentAsString()).contains("JPY 500 or USD 5.00");
    }

    @Test
    void a_write_down_begins_with_what_the_reel_stands_at() throws Exception {
        assertThat(desk.reads(Role.FINANCE, "/write-downs").getContentAsString())
                .contains("Look up what it stands at")
                .doesNotContain("name=\"amount\"");
        desk.services().answers("GET /write-downs/worth", 200, """
                {"holding":"reel","id":"R-0001","materialCode":"TAPE-127","quantity":12400,
                 "worth":{"minor":1044,"currency":"KWD"}}""");

        assertThat(desk.reads(Role.FINANCE, "/write-downs?holding=REEL&id=r-0001")
                        .getContentAsString())
                .contains("12.40 m", "at most KWD 1.044", "name=\"amountCurrency\" value=\"KWD\"");
    }

    @Test
    void more_than_it_stands_at_comes_back_with_the_refusal_and_the_amount() throws Exception {
        desk.services().answers("GET /write-downs/worth", 200, """
                {"holding":"reel","id":"R-0001","materialCode":null,"quantity":12400,
                 "worth":{"minor":1044,"currency":"USD"}}""");
        desk.services().answers("POST /write-downs", 422, """
                {"title":"Write-down unfit","status":422,"detail":"Give more than nothing and at most USD 10.44."}""");

        String page = desk.sends(
                        Role.FINANCE,
                        "/write-downs",
                        ("commandId," + COMMAND + ",holding,REEL,id,R-0001,amount,10.45,amountCurrency,USD,"
                                        + "reason,dry")
                                .split(","))
                .getContentAsString();

        assertThat(page).contains("at most USD 10.44.", "value=\"10.45\"", "value=\"dry\"");
    }

    @Test
    void a_label_nobody_received_is_told_before_an_amount_is_asked() throws Exception {
        desk.services().answers("GET /write-downs/worth", 409, """
                {"title":"Receipt unknown","status":409,"detail":"The receipt of Reel [R-9] is not in the books."}""");

        assertThat(desk.reads(Role.FINANCE, "/write-downs?id=R-9").getContentAsString())
                .contains("The receipt of Reel [R-9] is not in the books.")
                .doesNotContain("name=\"amount\"");
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
