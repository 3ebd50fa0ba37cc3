package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of money say what the services said, and their forms become wishes. */
class MoneyPagesTest {
    private static final String COMMAND = "01900000-0000-7000-8000-000000000002";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"/periods", "periods"},
            {"/periods/2026-05", "period-open"},
            {"/periods/2026-04", "period-asked"},
            {"/grants", "grants"},
            {"/grants/G-RIVER", "grant"},
            {"/site-shares", "site-shares"},
            {"/spend/grants", "spend-grants"},
            {"/spend", "spend"},
            {"/spend/lines", "spend-lines"},
            {"/spend/work", "spend-work"},
            {"/budgets", "budgets"},
            {"/budgets/BU-TAPE", "budget"},
            {"/journal/2026-04", "journal"},
            {"/journal/accounts", "journal-accounts"},
            {"/items", "items"},
            {"/crews", "crews"},
            {"/sites", "sites"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/spend             | USD 1,561.20                         | May 2026 cannot be closed yet.",
                "/spend?by=crew&from=all | went to sites <span>so far</span> | Spend per crew",
                "/spend?by=grant    | no grant                             | Spend per grant",
                "/spend/lines?account=site:S-MILL | 2026-06, came late     | Mill pond woods",
                "/spend/work        | USD 123.2857                         | 3 bands were full",
                "/budgets           | One budget is exceeded               | USD -200.00",
                "/budgets           | River corridor grant, Mill pond woods, tape only | USD 1,200.00 spent and USD 400.00 ordered",
                "/budgets/BU-TAPE   | forty more trees                     | USD 900.00",
                "/budgets/new       | whoever pays                         | Mill pond woods",
                "/journal           | these files never change             | 1310 Material in stock",
                "/journal/accounts  | Received, not invoiced               | stock:FASTENER",
                "/months            | cannot be closed yet.                | April 2026",
                "/months            | asks to reopen it                    | Look at May 2026",
                "/months/2026-05    | Two questions between books and field | Something changed since; sign it again.",
                "/months/2026-04    | A second person decides.             | 7 checks, 1 of them signed",
                "/grants            | USD 37,500.00                        | River corridor grant",
                "/grants            | USD -30.45                           | of it while it was not good",
                "/grants            | G-RIVER 66.7 %, G-TOWN 33.3 %        | no grant pays",
                "/grants/G-RIVER    | more trees agreed by letter          | USD 40,000.00",
                "/grants/new        | All that may be spent of it          | Last day",
                "/grants/shares/new | add up to 100 percent                | Town trees grant",
            })
    void a_page_shows_what_the_services_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/spend?from=2026-13",
                "/spend?from=2026-05&through=2026-13",
                "/spend.csv?from=2026-13",
                "/spend/work?from=2026-13",
                "/spend/lines?from=2026-13"
            })
    void a_month_that_is_none_is_named_with_what_to_write(String path) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains("[2026-13] is not a month. Write the year and the month, like 2026-05.");
    }

    @Test
    void mesh_below_zero_says_beside_the_figure_why_and_only_there() throws Exception {
        assertThat(desk.reads(Role.FINANCE, "/spend").getContentAsString())
                .contains("Mesh that comes off a tree whole is put back into use")
                .doesNotContain("class=\"hint\">put back into use", "Mesh stands below zero:");
        desk.services().recordedWith("GET /spend", "spend.json", "\"meshMinor\": ", "\"meshMinor\": -");

        assertThat(desk.reads(Role.FINANCE, "/spend").getContentAsString())
                .contains("class=\"hint\">put back into use", "Mesh stands below zero: more of it came off trees");
    }

    @Test
    void a_month_without_spend_gives_way_to_the_newest_one_with_spend_and_says_so() throws Exception {
        String rows = "{\"rows\":[%s],\"next\":null,\"total\":null,\"identity\":null,\"notReceived\":[]}";
        String row = """
                {"month":"%s","currency":"USD","tapeMinor":1,"meshMinor":0,"fastenerMinor":0,"totalMinor":1,
                 "usedMinor":1,"scrappedMinor":0,"missingMinor":0,"writtenDownMinor":0}""";
        desk.services().answersTo("GET /spend", "through=2026-06", 200, rows.formatted(""));
        desk.services()
                .answersTo(
                        "GET /spend",
                        "by=month",
                        200,
                        rows.formatted(row.formatted("2026-03") + "," + row.formatted("2026-05") + ","
                                + row.formatted("2026-04")));

        String page = desk.reads(Role.LEAD, "/spend").getContentAsString();
        assertThat(page)
                .contains("Nothing was spent <span>in June 2026</span> yet; this is the newest month with spend.")
                .contains("value=\"2026-05\"", "went to sites <span>in May 2026</span>");
        assertThat(desk.reads(Role.LEAD, "/spend?from=2026-06&through=2026-06").getContentAsString())
                .as("somebody who asks for a month gets that month")
                .contains("Nothing was spent")
                .doesNotContain("newest month with spend");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/months", "/months/2026-05", "/grants"})
    void a_crew_may_read_but_is_offered_nothing_to_change(String path) throws Exception {
        var answer = desk.reads(Role.CREW, path);

        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString()).doesNotContain("method=\"post\"");
    }

    @ParameterizedTest
    @CsvSource({
        "/months/2026-05/close,     FINANCE LEAD",
        "/months/2026-05/sign,      FINANCE LEAD",
        "/months/2026-04/reopening, FINANCE LEAD",
        "/months/2026-04/reopen,    FINANCE LEAD",
        "/grants,                   FINANCE LEAD",
        "/grants/G-RIVER/terms,     FINANCE LEAD",
        "/grants/shares,            FINANCE LEAD",
        "/budgets,                  FINANCE LEAD",
        "/budgets/BU-TAPE/amount,   FINANCE LEAD",
        "/journal/accounts,         FINANCE LEAD",
    })
    void only_finance_and_the_lead_may_write(String path, String allowed) throws Exception {
        for (Role role : Role.values()) {
            int status = desk.sends(role, path, "commandId", COMMAND).getStatus();
            assertThat(status == 403).as("%s writes %s", role, path).isEqualTo(!allowed.contains(role.name()));
        }
    }

    @Test
    void the_journal_is_passed_on_byte_for_byte_under_its_name() throws Exception {
        desk.services().answers("GET /journal/2026-04.csv", 200, "month,line\r\n2026-04,1\r\n");

        var answer = desk.reads(Role.FINANCE, "/journal/2026-04.csv");

        assertThat(answer.getContentAsString()).isEqualTo("month,line\r\n2026-04,1\r\n");
        assertThat(answer.getHeader("Content-Disposition")).contains("\"journal-2026-04.csv\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/spend", "/spend/lines", "/spend/work", "/grants", "/budgets", "/months"})
    void every_list_of_money_can_be_saved_both_ways(String list) throws Exception {
        for (String ending : new String[] {".csv", ".xlsx"}) {
            var answer = desk.reads(Role.FINANCE, list + ending);

            assertThat(answer.getStatus()).as(list + ending).isEqualTo(200);
            assertThat(answer.getHeader("Content-Disposition"))
                    .contains("attachment")
                    .endsWith(ending + "\"");
        }
    }

    @Test
    void who_asked_to_reopen_is_not_offered_to_grant_it() throws Exception {
        String granting = "action=\"/months/2026-04/reopen\"";

        assertThat(desk.reads(Role.FINANCE, "/months/2026-04").getContentAsString())
                .doesNotContain(granting);
        assertThat(desk.reads(Role.LEAD, "/months/2026-04").getContentAsString())
                .contains(granting);
    }
}
