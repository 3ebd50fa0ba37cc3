package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The books' pages say what the ledger said, every figure leads to its lines, and only finance decides a policy. */
class BooksPagesTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000003";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        for (String name : new String[] {"trial", "as-of", "ledger", "cost-policies"}) {
            desk.services().recorded("GET /" + name, name + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/trial?month=2026-05 | Every cent is where it should be | USD 115.50",
                "/trial?month=2026-05 | depot RIVER, bin A-03            | item=PIN&amp;place=depot:RIVER/A-03",
                "/trial?month=2026-05 | not received yet                 | 1,200 mm or pieces",
                "/trial?month=2026-05 | on trees                         | 24,770 mm stored",
                "/trial?month=2026-05 | after=TAPE-127                   | April 2026",
                "/as-of?by=place      | of which                         | Marked rows changed",
                "/as-of?by=place      | USD 88.49                        | 45,720 mm stored",
                "/ledger?period=2026-06 | site MILL                      | USD 1.14",
                "/ledger?id=R-0001    | of label R-0001                  | Show the next ones",
                "/cost-policies       | at the moving average            | replaced since",
            })
    void a_page_shows_what_the_ledger_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void a_month_that_leaks_a_cent_says_so_before_anything_else() throws Exception {
        desk.services().recorded("GET /trial", "trial-leaking.json");

        assertThat(desk.reads(Role.FINANCE, "/trial?month=2026-05").getContentAsString())
                .contains("The month does not add up", "USD 0.07 are neither in stock nor paid")
                .doesNotContain("Every cent is where it should be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/trial.csv?month=2026-05", "/as-of.csv?by=place", "/ledger.csv", "/cost-policies.csv"})
    void every_list_comes_out_as_a_file_page_after_page(String path) throws Exception {
        desk.services().answers("GET /trial", 200, page("trial.json"));
        desk.services().answers("GET /ledger", 200, page("ledger.json"));
        var answer = desk.reads(Role.FINANCE, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString().lines().count()).as(path).isGreaterThan(2);
        assertThat(desk.reads(Role.FINANCE, path.replace(".csv", ".xlsx")).getStatus())
                .isEqualTo(200);
    }

    private static String page(String file) throws Exception {
        try (var in = BooksPagesTest.class.getResourceAsStream("/recorded/" + file)) {
            assertThat(in).as(file).isNotNull();
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .replaceAll("\"next\":\"[^\"]*\"", "\"next\":null");
        }
    }

    @Test
    void only_finance_and_the_lead_decide_how_fasteners_are_valued() throws Exception {
        for (Role role : Role.values()) {
            int status =
                    desk.sends(role, "/cost-policies", "commandId", COMMAND).getStatus();
            assertThat(status == 403).as("%s decides", role).isEqualTo(role == Role.CREW || role == Role.DEPOT);
        }
        assertThat(desk.reads(Role.CREW, "/cost-policies").getContentAsString()).doesNotContain("method=\"post\"");
    }

    @Test
    void a_decision_goes_to_the_service_and_a_refusal_comes_back_with_what_was_typed() throws Exception {
        desk.services()
                .answers(
                        "POST /cost-policies",
                        409,
                        "{\"title\": \"No\", \"status\": 409, \"detail\": \"Year [2026] has entries in the books.\"}");
        String page = desk.sends(
                        Role.FINANCE,
                        "/cost-policies",
                        "commandId",
                        COMMAND,
                        "year",
                        "2026",
                        "method",
                        "OLDEST_FIRST",
                        "reason",
                        "as the auditor asks")
                .getContentAsString();

        assertThat(desk.services().last("POST").body())
                .contains("\"year\":2026", "\"method\":\"OLDEST_FIRST\"", "\"reason\":\"as the auditor asks\"");
        assertThat(page).contains("Year [2026] has entries", "as the auditor asks");
    }
}
