package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.JsonNode;

/** A quote, an order, two deliveries, one reel back to the supplier: through the front door, as a counter does it. */
@OnPostgres
class FromQuoteToShelfTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    private OverHttp http = new OverHttp(0, "");

    @BeforeEach
    void client() {
        http = new OverHttp(port, key);
    }

    private void quoted(String mark) {
        http.ok("/items", """
                {"materialCode": "%s-TAPE", "kind": "TAPE", "name": "Tape", "width": "5 in", "reelLength": "55 yd",
                 "unitCost": {"minor": 3900, "currency": "USD"}}""".formatted(mark));
        http.ok("/suppliers", "{\"supplierId\": \"%s-SUP\", \"name\": \"Holm and daughters\"}".formatted(mark));
        JsonNode noted = http.ok("/suppliers/%s-SUP/quotes".formatted(mark), """
                {"materialCode": "%s-TAPE", "unitCode": "C62", "packageCode": "RL", "content": "55 yd",
                 "packUnits": 2, "minimumUnits": 4, "leadTimeDays": 9, "validFrom": "2026-01-01",
                 "prices": [{"fromUnits": 10, "unitPrice": {"minor": 3501, "currency": "USD"}},
                            {"fromUnits": 4, "unitPrice": {"minor": 3850, "currency": "USD"}}]}""".formatted(mark));
        assertThat(noted.path("quote").asInt()).isEqualTo(1);
    }

    private JsonNode ordered(String mark, int units) {
        return http.ok("/purchases", """
                {"purchaseId": "%s-PO", "supplierId": "%s-SUP", "depotId": "%s-YARD",
                 "lines": [{"quote": 1, "units": %d, "siteId": "S-MILL", "grant": "G-1"}],
                 "happenedAt": "2026-05-04T08:00:00Z"}""".formatted(mark, mark, mark, units));
    }

    @Test
    void an_order_is_priced_by_its_break_arrives_in_two_deliveries_and_is_complete() {
        quoted("Q1");
        JsonNode placed = ordered("Q1", 10);
        assertThat(placed.path("total").path("minor").asLong()).isEqualTo(35_010);
        assertThat(placed.path("expectedOn").asString()).isEqualTo("2026-05-13");

        JsonNode taken = http.ok("/deliveries", """
                {"deliveryId": "Q1-D1", "purchaseId": "Q1-PO", "depotId": "Q1-YARD", "bin": "A-03", "accept": true,
                 "lines": [{"purchaseLine": 1, "statedUnits": 3, "reels": [
                    {"length": "55 yd", "width": "127 mm", "lot": "l  4711", "expiresOn": "2028-03-31"},
                    {"length": "50 m", "condition": "DAMAGED"}]}],
                 "happenedAt": "2026-05-12T09:00:00Z"}""");
        assertThat(taken.path("keys"))
                .extracting(JsonNode::asString)
                .containsExactly("reel/Q1-SUP-0001", "reel/Q1-SUP-0002");
        assertThat(taken.path("findings"))
                .extracting(each ->
                        each.path("what").asString() + " " + each.path("id").asString())
                .containsExactly("SHORT ", "SHORT Q1-SUP-0002", "DAMAGED Q1-SUP-0002");

        JsonNode line = http.get("/purchases/Q1-PO").path("lines").get(0);
        assertThat(line.path("received").asLong()).isEqualTo(50_292 + 50_000);
        assertThat(line.path("remaining").asLong()).isEqualTo(8 * 50_292);
        assertThat(line.path("committed").path("minor").asLong()).isEqualTo(8 * 3_501);
        assertThat(state("Q1-PO")).isEqualTo("partly received");
        assertThat(place("Q1-SUP-0001")).isEqualTo("depot:Q1-YARD/A-03");
        assertThat(place("Q1-SUP-0002")).isEqualTo("set-aside:Q1-YARD");
        assertThat(http.get("/lots?lot=L 4711").path("rows").get(0).path("id").asString())
                .isEqualTo("Q1-SUP-0001");

        http.ok("/deliveries", """
                {"deliveryId": "Q1-D2", "purchaseId": "Q1-PO", "depotId": "Q1-YARD", "accept": false,
                 "lines": [{"purchaseLine": 1, "reels": [%s]}]}""".formatted("{\"length\": \"55 yd\"},".repeat(7) + "{\"length\": \"55 yd\"}"));
        assertThat(state("Q1-PO")).isEqualTo("received");
        assertThat(place("Q1-SUP-0010")).isEqualTo("set-aside:Q1-YARD");

        acceptingLater();
    }

    private void acceptingLater() {
        http.ok("/deliveries/Q1-D2/accept", "{\"keys\": [\"reel/Q1-SUP-0010\"], \"bin\": \"B-01\"}");
        assertThat(place("Q1-SUP-0010")).isEqualTo("depot:Q1-YARD/B-01");
        assertThat(http.post("/deliveries/Q1-D2/accept", "{\"keys\": [\"reel/Q1-SUP-0010\"]}")
                        .getStatusCode()
                        .value())
                .isEqualTo(409);
    }

    @Test
    void a_reel_that_goes_back_takes_its_cost_along_and_is_to_come_again() {
        quoted("Q2");
        ordered("Q2", 4);
        http.ok("/deliveries", """
                {"deliveryId": "Q2-D1", "purchaseId": "Q2-PO", "depotId": "Q2-YARD", "accept": true,
                 "lines": [{"purchaseLine": 1, "reels": [{"reelId": "q2-a", "length": "55 yd"},
                    {"length": "55 yd"}, {"length": "55 yd"}, {"length": "55 yd"}]}]}""");
        assertThat(state("Q2-PO")).isEqualTo("received");

        http.ok("/deliveries/Q2-D1/send-back", "{\"keys\": [\"reel/Q2-A\"], \"reason\": \"edge crushed\"}");

        assertThat(state("Q2-PO")).isEqualTo("partly received");
        JsonNode line = http.get("/purchases/Q2-PO").path("lines").get(0);
        assertThat(line.path("receivedUnits").asLong()).isEqualTo(3);
        assertThat(line.path("committed").path("minor").asLong()).isEqualTo(3_850);
        assertThat(http.get("/deliveries/Q2-D1")
                        .path("lines")
                        .get(0)
                        .path("pieces")
                        .get(0)
                        .path("state")
                        .asString())
                .isEqualTo("sent back");
        JsonNode reel = http.get("/reels/Q2-A").path("balance");
        assertThat(reel.path("inDepotMm").asLong()).isZero();
        assertThat(reel.path("cost").path("minor").asLong()).isZero();
        assertThat(http.get("/audit").path("zero").asBoolean()).isTrue();
        closingTheRest();
    }

    private void closingTheRest() {
        assertThat(http.post("/purchases/Q2-PO/cancel", "{\"reason\": \"enough\"}")
                        .getStatusCode()
                        .value())
                .as("something has come")
                .isEqualTo(409);
        http.ok("/purchases/Q2-PO/close", "{\"reason\": \"the rest is not needed\"}");
        assertThat(http.get("/purchases/Q2-PO")
                        .path("lines")
                        .get(0)
                        .path("remaining")
                        .asLong())
                .isZero();
    }

    @Test
    void another_item_than_ordered_is_in_the_books_but_the_order_still_waits() {
        quoted("Q3");
        ordered("Q3", 4);
        http.ok("/items", """
                {"materialCode": "Q3-MESH", "kind": "MESH", "name": "Mesh", "width": "300 mm", "opening": "12 mm",
                 "reelLength": "30 m", "unitCost": {"minor": 6200, "currency": "USD"}}""");

        String body = """
                {"deliveryId": "Q3-D1", "purchaseId": "Q3-PO", "depotId": "Q3-YARD", "accept": false,
                 "lines": [{"purchaseLine": 1, "materialCode": "Q3-MESH", %s
                    "reels": [{"length": "30 m", "width": "350 mm"}]}]}""";
        ResponseEntity<JsonNode> refused = http.post("/deliveries", body.formatted(""));
        assertThat(String.valueOf(refused.getBody())).contains("Give the cost of the line.");
        JsonNode taken = http.ok("/deliveries", body.formatted("\"cost\": {\"minor\": 6100, \"currency\": \"USD\"},"));

        assertThat(taken.path("findings"))
                .extracting(each -> each.path("what").asString())
                .containsExactly("WRONG_ITEM", "WRONG_WIDTH");
        assertThat(state("Q3-PO")).isEqualTo("ordered");
        assertThat(place("Q3-SUP-0001")).isEqualTo("set-aside:Q3-YARD");
    }

    @Test
    void what_the_supplier_does_not_sell_is_refused_with_what_to_order() {
        quoted("Q4");
        String body = "{\"purchaseId\": \"Q4-P%d\", \"supplierId\": \"Q4-SUP\", \"depotId\": \"Q4\","
                + " \"lines\": [{\"quote\": 1, \"units\": %d}]}";

        assertThat(String.valueOf(http.post("/purchases", body.formatted(1, 2)).getBody()))
                .contains("Order 4.");
        assertThat(String.valueOf(http.post("/purchases", body.formatted(2, 7)).getBody()))
                .contains("Order 8.");
        http.ok("/suppliers/Q4-SUP/quotes/1/withdraw", "{\"reason\": \"adhesive changed\"}");
        assertThat(http.post("/purchases", body.formatted(3, 8)).getStatusCode().value())
                .isEqualTo(409);
        assertThat(http.get("/quotes?material=Q4-TAPE").path("rows")).isEmpty();
    }

    private String state(String purchase) {
        return http.get("/purchases/" + purchase).path("purchase").path("state").asString();
    }

    private String place(String reel) {
        return http.get("/reels/" + reel).path("balance").path("place").asString();
    }
}
