package org.bandtrail.supplystock.books;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.InJuly;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** From a delivery to the trial, the past and the policy, as finance asks for them. */
@InJuly
class BooksOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Projectors projectors;

    private OverHttp finance = new OverHttp(0, "", "");

    @BeforeEach
    void finance_asks() {
        finance = new OverHttp(port, key, "P-30");
    }

    @Test
    void a_delivery_shows_in_trial_past_and_lines_and_a_rebuild_changes_nothing() {
        finance.ok("/items", """
            {"materialCode": "BOOK-TAPE", "kind": "TAPE", "name": "Tape", "width": "127 mm", "reelLength": "50 m",
             "unitCost": {"minor": 1800, "currency": "USD"}}\
            """);
        finance.ok("/depots", "{\"depotId\": \"BOOKS-DEPOT\", \"name\": \"Where books are kept\"}");
        finance.ok("/reels", """
            {"reelId": "BOOK-1", "materialCode": "BOOK-TAPE", "depotId": "BOOKS-DEPOT", "length": "50 m",
             "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "2026-05-04T08:00:00Z"}\
            """);

        JsonNode row = row(finance.get("/trial?period=2026-05&limit=1000"), "materialCode", "BOOK-TAPE");
        assertThat(row.path("place").asString()).isEqualTo("depot:BOOKS-DEPOT");
        assertThat(row.path("openingMinor").asLong()).isZero();
        assertThat(row.path("inMinor").asLong()).isEqualTo(18_00);
        assertThat(row.path("closing").asLong()).isEqualTo(50_000);
        assertThat(row(finance.get("/trial?period=2026-06&limit=1000"), "materialCode", "BOOK-TAPE")
                        .path("openingMinor")
                        .asLong())
                .isEqualTo(18_00);
        assertThat(finance.get("/trial?period=2026-05").path("law"))
                .allSatisfy(
                        law -> assertThat(law.path("differenceMinor").asLong()).isZero());

        String moment = "/as-of?at=2026-05-05T00:00:00Z&limit=1000";
        JsonNode past = row(finance.get(moment + "&by=item"), "materialCode", "BOOK-TAPE");
        assertThat(past.path("minorNow").asLong()).isEqualTo(18_00);
        assertThat(past.path("minorThen").asLong())
                .as("told in July, so not known in May")
                .isZero();
        assertThat(row(finance.get(moment + "&by=holding"), "name", "reel BOOK-1")
                        .path("quantityNow")
                        .asLong())
                .isEqualTo(50_000);
        assertThat(finance.get("/ledger?holding=reel&id=BOOK-1").path("rows"))
                .singleElement()
                .satisfies(line -> assertThat(line.path("inMinor").asLong()).isEqualTo(18_00));
        JsonNode before = finance.get("/ledger?limit=1000");
        projectors.rebuild("ledger");
        assertThat(finance.get("/ledger?limit=1000")).isEqualTo(before);
        assertThat(finance.get("/trial/recount").path("rows")).isEmpty();
    }

    @Test
    void what_nobody_can_read_is_refused_by_name() {
        assertThat(finance.get("/as-of?by=account").path("by").asString()).isEqualTo("account");
        assertThat(status("/as-of?by=colour")).contains("[colour]");
        assertThat(status("/ledger?after=yesterday")).contains("[yesterday]");
    }

    @Test
    void a_policy_is_set_for_a_year_to_come_and_listed() {
        finance.ok("/cost-policies", """
            {"year": 2031, "method": "MOVING_AVERAGE", "reason": "prices move with every delivery"}\
            """);
        JsonNode listed = finance.get("/cost-policies");
        assertThat(listed.path("thisYear").asString()).isEqualTo("OLDEST_FIRST");
        assertThat(row(listed, "year", "2031").path("method").asString()).isEqualTo("MOVING_AVERAGE");
        assertThat(finance.refused(422, "/cost-policies", """
            {"year": 2031, "method": "OLDEST_FIRST", "reason": " "}\
            """)).contains("needs a reason");
    }

    private String status(String path) {
        return org.assertj.core.api.Assertions.catchThrowableOfType(
                        org.springframework.web.client.HttpClientErrorException.BadRequest.class,
                        () -> finance.get(path))
                .getResponseBodyAsString();
    }

    private static JsonNode row(JsonNode answer, String field, String value) {
        return answer.path("rows")
                .valueStream()
                .filter(row -> row.path(field).asString().equals(value))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No row with " + field + " " + value + " in " + answer));
    }
}
