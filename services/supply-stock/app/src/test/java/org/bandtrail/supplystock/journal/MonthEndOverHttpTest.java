package org.bandtrail.supplystock.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.stream.StreamSupport;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.InJuly;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import tools.jackson.databind.JsonNode;

/**
 * A month from the first fitted band to the exported journal: grants share it, a budget stands beside it, it is closed,
 * and what comes late counts in the next month. The steps follow each other on one set of books of their own.
 */
@InJuly
@DirtiesContext
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class MonthEndOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    private OverHttp anna = new OverHttp(0, "", "");

    @BeforeEach
    void anna_asks() {
        anna = new OverHttp(port, key, "P-30");
    }

    @Test
    @Order(1)
    void a_third_of_a_reel_is_fitted_in_june_and_two_grants_share_it_to_the_cent() {
        send(MonthEnd.received("2026-06-02T08:00:00Z"), MonthEnd.fitted("2026-06-05T09:00:00Z"));
        grant("ME-RIVER");
        grant("ME-TOWN");
        anna.ok("/site-shares", """
                {"siteId": "ME-MILL", "from": "2026-06",
                 "shares": [{"grantId": "ME-RIVER", "permille": 500}, {"grantId": "ME-TOWN", "permille": 500}]}""");

        // A third of 10.00 is 3.33; half of it is 1.665, and the odd cent goes to the first of the two.
        JsonNode rows = anna.get("/spend?by=grant&from=2026-06&through=2026-06").path("rows");
        assertThat(rows)
                .extracting(row -> row.path("grantId").asString() + " "
                        + row.path("totalMinor").asLong())
                .containsExactly("ME-RIVER 167", "ME-TOWN 166");
        assertThat(anna.get("/spend/grants").path("rows"))
                .extracting(row -> row.path("spentMinor").asLong() + " "
                        + row.path("outsideMinor").asLong())
                .containsExactly("167 0", "166 0");
    }

    @Test
    @Order(2)
    void a_budget_stands_beside_what_was_spent_of_its_grant_and_kind() {
        anna.ok("/budgets", """
                {"budgetId": "ME-BU", "name": "Tape by the river grant", "grantId": "ME-RIVER", "kind": "TAPE",
                 "from": "2026-06", "through": "2026-09", "amount": {"minor": 500, "currency": "USD"}}""");
        anna.ok("/budgets", """
                {"budgetId": "ME-BU2", "name": "Mesh", "kind": "MESH",
                 "from": "2026-06", "through": "2026-09", "amount": {"minor": 500, "currency": "USD"}}""");

        JsonNode rows = anna.get("/budgets").path("rows");
        assertThat(rows.get(0).path("actualMinor").asLong()).isEqualTo(167);
        assertThat(rows.get(0).path("leftMinor").asLong()).isEqualTo(333);
        assertThat(rows.get(1).path("actualMinor").asLong()).isZero();

        anna.ok("/budgets/ME-BU/amount", """
                {"amount": {"minor": 900, "currency": "USD"}, "reason": "more trees"}""");
        JsonNode whole = anna.get("/budgets/ME-BU");
        assertThat(whole.path("standing").path("leftMinor").asLong()).isEqualTo(733);
        assertThat(whole.path("history")).hasSize(2);
    }

    @Test
    @Order(3)
    void a_journal_without_accounts_is_shown_but_not_exported() {
        assertThat(anna.get("/journal/2026-06").path("unmapped"))
                .extracting(JsonNode::asString)
                .containsExactly("site:ME-MILL", "stock:TAPE", "supplier");
        assertThat(anna.notGiven(409, "/journal/2026-06.csv")).contains("have no account then");

        anna.ok("/journal/accounts", """
                {"from": "2026-06", "accounts": [
                  {"ours": "stock", "number": "1310", "name": "Material in stock"},
                  {"ours": "site", "number": "5200", "name": "Material used"},
                  {"ours": "written-off", "number": "5290", "name": "Material lost"},
                  {"ours": "written-down", "number": "5295", "name": "Material written down"},
                  {"ours": "slit", "number": "1390", "name": "Slitting"},
                  {"ours": "supplier", "number": "2050", "name": "Received, not invoiced"}]}""");
        assertThat(new String(anna.file("/journal/2026-06.csv"), StandardCharsets.UTF_8).lines())
                .containsExactly(
                        "month,line,what,account,account_name,our_account,currency,debit,credit",
                        "2026-06,1,fitted,5200,Material used,site:ME-MILL,USD,3.33,0.00",
                        "2026-06,2,fitted,1310,Material in stock,stock:TAPE,USD,0.00,3.33",
                        "2026-06,3,received,1310,Material in stock,stock:TAPE,USD,10.00,0.00",
                        "2026-06,4,received,2050,\"Received, not invoiced\",supplier,USD,0.00,10.00");
    }

    @Test
    @Order(4)
    void after_the_close_a_late_fact_of_june_counts_in_july_and_junes_files_stay_the_same() {
        closeJune();
        byte[] csv = anna.file("/journal/2026-06.csv");
        byte[] xlsx = anna.file("/journal/2026-06.xlsx");

        send(MonthEnd.fitted("2026-06-29T09:00:00Z"));

        assertThat(anna.file("/journal/2026-06.csv")).isEqualTo(csv);
        assertThat(anna.file("/journal/2026-06.xlsx")).isEqualTo(xlsx);
        JsonNode late =
                anna.get("/spend/lines?account=site:ME-MILL&from=2026-07").path("rows");
        assertThat(late).hasSize(1);
        assertThat(late.get(0).path("happenedAt").asString()).isEqualTo("2026-06-29T09:00:00Z");
        assertThat(late.get(0).path("month").asString()).isEqualTo("2026-07");
        JsonNode identity = anna.get("/spend").path("identity");
        assertThat(identity.path("charged").path("minor").asLong()).isEqualTo(667);
        assertThat(identity.path("differenceMinor").asLong()).isZero();
    }

    @Test
    @Order(5)
    void a_closed_month_keeps_its_payers_and_its_accounts() {
        anna.refused(409, "/site-shares", """
                {"siteId": "ME-MILL", "from": "2026-06", "shares": [{"grantId": "ME-RIVER", "permille": 1000}]}""");
        anna.refused(409, "/journal/accounts", """
                {"from": "2026-06", "accounts": [{"ours": "stock", "number": "1", "name": "x"}]}""");
    }

    private void closeJune() {
        List<String> open = StreamSupport.stream(
                        anna.get("/periods/2026-06").path("checks").spliterator(), false)
                .filter(check -> !check.path("passes").asBoolean())
                .map(check -> check.path("check").asString())
                .toList();
        for (String check : open) {
            anna.ok("/periods/2026-06/sign", "{\"check\": \"%s\", \"reason\": \"known\"}".formatted(check));
        }
        anna.ok("/periods/2026-06/close", "{}");
    }

    private void send(ReelCommand... wishes) {
        work.inOneTransaction(() -> {
            for (ReelCommand wish : wishes) {
                commands.send(wish);
            }
            return wishes.length;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    private void grant(String id) {
        anna.ok("/grants", """
                {"grantId": "%s", "name": "Grant %s", "amount": {"minor": 500000, "currency": "USD"},
                 "from": "2026-01-01", "until": "2026-12-31"}""".formatted(id, id));
    }
}
