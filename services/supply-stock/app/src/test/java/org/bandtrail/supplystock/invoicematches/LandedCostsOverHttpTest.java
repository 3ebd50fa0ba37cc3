package org.bandtrail.supplystock.invoicematches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Credits, foreign orders, two persons, freight, write-downs, down to the cost of a reel. Computed by hand. */
@OnPostgres
class LandedCostsOverHttpTest {
    private static final String HEADER =
            "number,kind,issued_on,currency,order,what,line,item,order_line,quantity,unit,price,amount\n";

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Value("${bandtrail.service-key}")
    String key = "";

    @LocalServerPort
    int port;

    @Test
    void a_credit_note_lowers_the_price_again() {
        BoughtGoods goods = goods("CREDIT");
        goods.come("D-CREDIT", 1, 2);
        goods.desk()
                .post(
                        "/invoices/"
                                + goods.keep(HEADER + "A-7,,2026-05-19,USD,PO-CREDIT,,1,Band tape,1,2,XRL,48.50,\n")
                                + "/approve",
                        "P-FIN",
                        Map.of());
        String note = goods.keep(HEADER + "C-1,credit note,2026-05-26,USD,PO-CREDIT,,1,Band tape,1,1,XRL,7.01,\n");
        goods.desk()
                .post(
                        "/invoices/" + note + "/link",
                        "P-FIN",
                        Map.of("line", "1", "purchaseId", "PO-CREDIT", "purchaseLine", 1, "priceOnly", true));

        JsonNode done = goods.desk().post("/invoices/" + note + "/approve", "P-FIN", Map.of());
        assertThat(done.get("toPay").get("minor").asLong()).isEqualTo(-7_01);
        assertThat(goods.cost(1)).as("the odd cent goes to the first").isEqualTo(48_50 - 3_51);
        assertThat(goods.cost(2)).isEqualTo(48_50 - 3_50);
    }

    @Test
    void a_large_sum_needs_two_persons_who_are_not_the_same() {
        BoughtGoods goods = goods("TWO");
        goods.come("D-TWO", 1, 10);
        String id = goods.keep(HEADER
                + "A-8,,2026-05-19,USD,PO-TWO,,1,Band tape,1,10,XRL,48.50,\n"
                + ",,,,,charge,,Freight,,,,,600.00\n");

        JsonNode once = goods.desk().post("/invoices/" + id + "/approve", "P-ANN", Map.of());
        assertThat(once.get("secondPersonNeeded").asBoolean()).isTrue();
        assertThat(goods.billed()).isZero();
        assertThatThrownBy(() -> goods.desk().post("/invoices/" + id + "/approve", "P-ANN", Map.of()))
                .hasMessageContaining("Another person has to approve it as well");
        goods.desk().post("/invoices/" + id + "/approve", "P-BEN", Map.of());
        assertThat(goods.billed()).isEqualTo(10 * BoughtGoods.REEL);
    }

    @Test
    void freight_of_an_invoice_is_spread_over_its_delivery_once_and_can_be_taken_back() {
        BoughtGoods goods = goods("CARRY");
        goods.come("D-CARRY", 1, 3);
        String id = goods.keep(HEADER
                + "A-9,,2026-05-19,USD,PO-CARRY,,1,Band tape,1,3,XRL,48.50,\n"
                + ",,,,,charge,,Freight,,,,,100.00\n");

        goods.desk().post("/landed-costs", "P-FIN", freight("LC-CARRY", id, 100_00));
        assertThat(List.of(goods.cost(1), goods.cost(2), goods.cost(3)))
                .as("100.00 over three: 33.34, 33.33, 33.33")
                .containsExactly(48_50L + 33_34, 48_50L + 33_33, 48_50L + 33_33);
        assertThatThrownBy(() -> goods.desk().post("/landed-costs", "P-FIN", freight("LC-CARRY-2", id, 1)))
                .hasMessageContaining("charges of USD 0.00 left to spread, not USD 0.01");

        Map<String, String> why = Map.of("reason", "it was of another delivery");
        goods.desk().post("/landed-costs/LC-CARRY/take-back", "P-FIN", why);
        assertThat(goods.cost(1)).isEqualTo(48_50);
        JsonNode spread = goods.desk().get("/invoices/" + id).get("invoice").get("spread");
        assertThat(spread.get("minor").asLong()).isZero();
    }

    @Test
    void stock_is_written_down_and_the_list_says_why() {
        BoughtGoods goods = goods("DOWN");
        goods.come("D-DOWN", 1, 1);
        goods.desk()
                .post(
                        "/write-downs",
                        "P-FIN",
                        Map.of(
                                "holding",
                                "REEL",
                                "id",
                                goods.reel(1),
                                "reason",
                                "adhesive out of date",
                                "amount",
                                Map.of("minor", 40_00, "currency", "USD"),
                                "happenedAt",
                                "2026-05-20T10:00:00Z"));

        JsonNode row = goods.desk().get("/write-downs?limit=1").get("rows").get(0);
        assertThat(row.get("id").asString()).isEqualTo(goods.reel(1));
        assertThat(row.get("amount").get("minor").asLong()).isEqualTo(40_00);
        assertThat(row.get("reason").asString()).isEqualTo("adhesive out of date");
    }

    @Test
    void what_a_reel_stands_at_is_told_and_is_the_most_that_can_be_written_down() {
        BoughtGoods goods = goods("WORTH");
        goods.come("D-WORTH", 1, 1);
        String ask = "/write-downs/worth?holding=REEL&id=" + goods.reel(1);
        assertThat(goods.desk().get(ask).get("worth").get("minor").asLong())
                .as("one reel at 48.50")
                .isEqualTo(48_50);

        assertThatThrownBy(() -> goods.desk().post("/write-downs", "P-FIN", down(goods.reel(1), 48_51)))
                .hasMessageContaining("cannot be written down by [USD 48.51]")
                .hasMessageContaining("at most USD 48.50");
        goods.desk().post("/write-downs", "P-FIN", down(goods.reel(1), 40_00));
        assertThat(goods.desk().get(ask).get("worth").get("minor").asLong())
                .as("48.50 - 40.00")
                .isEqualTo(8_50);
        assertThatThrownBy(() -> goods.desk().get("/write-downs/worth?holding=BATCH&id=F-NEVER"))
                .hasMessageContaining("F-NEVER");
    }

    private static Map<String, Object> down(String reel, long minor) {
        return Map.of(
                "holding",
                "REEL",
                "id",
                reel,
                "reason",
                "adhesive out of date",
                "amount",
                Map.of("minor", minor, "currency", "USD"),
                "happenedAt",
                "2026-05-20T10:00:00Z");
    }

    @Test
    void rebuilt_read_models_are_the_same_as_the_old_ones() {
        BoughtGoods goods = goods("AGAIN");
        goods.come("D-AGAIN", 1, 1);
        String id = goods.keep(HEADER + "A-10,,2026-05-19,USD,PO-AGAIN,,1,Band tape,1,1,XRL,48.50,\n");
        goods.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of());
        JsonNode before = goods.desk().get("/invoices/" + id);

        List.of("invoice", "billing", "landed-cost", "write-down", "tolerance").forEach(projectors::rebuild);

        assertThat(goods.desk().get("/invoices/" + id)).isEqualTo(before);
    }

    @Test
    void an_order_of_another_supplier_cannot_be_billed() {
        BoughtGoods mine = goods("MINE");
        goods("THEIRS");
        String id = mine.keep(HEADER + "A-11,,2026-05-19,USD,PO-MINE,,1,Band tape,1,1,XRL,48.50,\n");

        assertThatThrownBy(() -> mine.desk()
                        .post(
                                "/invoices/" + id + "/link",
                                "P-FIN",
                                Map.of("line", "1", "purchaseId", "PO-THEIRS", "purchaseLine", 1, "priceOnly", false)))
                .hasMessageContaining("Order [PO-THEIRS] went to supplier [S-THEIRS]");
    }

    private BoughtGoods goods(String name) {
        return new BoughtGoods(name, work, commands, projectors, "http://127.0.0.1:" + port, key);
    }

    private static Map<String, ?> freight(String id, String invoice, long minor) {
        return Map.of(
                "landedCostId",
                id,
                "what",
                "FREIGHT",
                "basis",
                "COUNT",
                "invoiceId",
                invoice,
                "amount",
                Map.of("minor", minor, "currency", "USD"),
                "deliveries",
                List.of("D-CARRY"));
    }
}
