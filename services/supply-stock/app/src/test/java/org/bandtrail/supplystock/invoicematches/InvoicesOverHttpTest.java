package org.bandtrail.supplystock.invoicematches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.client.HttpClientErrorException;
import tools.jackson.databind.JsonNode;

/** From a file to the cost of a reel and a site. All amounts computed by hand. */
@OnPostgres
class InvoicesOverHttpTest {
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
    void a_dearer_invoice_is_held_accepted_approved_and_carried_to_what_is_left_and_what_was_used() {
        BoughtGoods goods = goods("DEAR");
        goods.come("D-DEAR", 1, 8);
        goods.useAQuarter(1);
        String csv = HEADER + "A-1,,2026-05-19,USD,PO-DEAR,,1,Band tape,1,8,XRL,49.50,\n";

        JsonNode look = goods.preview(csv);
        assertThat(look.get("lines").get(0).get("verdict").asString()).isEqualTo("price differs");
        assertThat(look.get("lines").get(0).get("billed").asLong()).isEqualTo(8 * BoughtGoods.REEL);
        assertThat(goods.get("/invoices?supplier=S-DEAR").get("rows").size())
                .as("a preview stores nothing")
                .isZero();

        String id = goods.keep(csv);
        assertThatThrownBy(() -> goods.post("/invoices/" + id + "/approve", "P-FIN", Map.of()))
                .isInstanceOf(HttpClientErrorException.Conflict.class)
                .hasMessageContaining("Line 1 costs USD 396.00; by the order it would be USD 388.00");
        goods.post(
                "/invoices/" + id + "/settle",
                "P-FIN",
                Map.of("line", "1", "how", "ACCEPTED", "reason", "price of May, agreed by mail"));
        JsonNode done = goods.post("/invoices/" + id + "/approve", "P-FIN", Map.of());

        assertThat(done.get("toPay").get("minor").asLong()).isEqualTo(396_00);
        assertThat(done.get("carried").size()).isEqualTo(8);
        assertThat(StreamSupport.stream(done.get("carried").spliterator(), false)
                        .mapToLong(each -> each.get("amount").get("minor").asLong())
                        .sum())
                .isEqualTo(8_00);
        JsonNode reel = goods.get("/reels/" + goods.reel(1)).get("balance");
        assertThat(reel.get("cost").get("minor").asLong()).isEqualTo(49_50);
        assertThat(reel.get("charged").get("minor").asLong())
                .as("a quarter of 49.50 is 12.375, rounded up")
                .isEqualTo(12_38);
        JsonNode match = goods.get("/invoices/" + id);
        assertThat(match.get("invoice").get("state").asString()).isEqualTo("approved");
        assertThat(match.get("matches").get(0).get("carried").get("minor").asLong())
                .isEqualTo(8_00);
        assertThat(match.get("matches").get(0).get("billedBefore").asLong()).isZero();
    }

    @Test
    void the_same_paper_is_refused_and_points_to_the_first() {
        BoughtGoods goods = goods("TWICE");
        goods.come("D-TWICE", 1, 2);
        String csv = HEADER + "A 2,,2026-05-19,USD,PO-TWICE,,1,Band tape,1,2,XRL,48.50,\n";
        String id = goods.keep(csv);

        assertThat(goods.preview(csv.replace("A 2", "a 2"))
                        .get("earlier")
                        .get(0)
                        .get("invoiceId")
                        .asString())
                .isEqualTo(id);
        assertThatThrownBy(() -> goods.keep(csv.replace("A 2", "a-2")))
                .isInstanceOf(HttpClientErrorException.Conflict.class)
                .hasMessageContaining(id);
    }

    @Test
    void part_invoices_bill_no_more_than_came_and_what_came_later_is_billed_later() {
        BoughtGoods goods = goods("PART");
        goods.come("D-PART-1", 1, 4);
        String first = goods.keep(HEADER + "A-3,,2026-05-19,USD,PO-PART,,1,Band tape,1,3,XRL,48.50,\n");
        goods.post("/invoices/" + first + "/approve", "P-FIN", Map.of());
        String second = goods.keep(HEADER + "A-4,,2026-05-26,USD,PO-PART,,1,Band tape,1,7,XRL,48.50,\n");

        assertThatThrownBy(() -> goods.post("/invoices/" + second + "/approve", "P-FIN", Map.of()))
                .hasMessageContaining("bills 320.040 m after 137.160 m before; 182.880 m was received");
        goods.come("D-PART-2", 5, 6);
        JsonNode done = goods.post("/invoices/" + second + "/approve", "P-FIN", Map.of());
        assertThat(done.get("carried").size()).isZero();
        assertThat(goods.get("/invoices/order-lines?supplier=S-PART")
                        .get("rows")
                        .get(0)
                        .get("billed")
                        .asLong())
                .isEqualTo(10 * BoughtGoods.REEL);
    }

    @Test
    void only_what_came_is_paid_of_a_disputed_line() {
        BoughtGoods goods = goods("SHORT");
        goods.come("D-SHORT", 1, 8);
        String id = goods.keep(HEADER + "A-5,,2026-05-19,USD,PO-SHORT,,1,Band tape,1,10,XRL,48.50,\n");
        goods.post("/invoices/" + id + "/hold", "P-FIN", Map.of("line", "1", "reason", "two reels are missing"));
        assertThat(goods.get("/invoices/" + id).get("invoice").get("state").asString())
                .isEqualTo("held");

        goods.post(
                "/invoices/" + id + "/settle",
                "P-FIN",
                Map.of("line", "1", "how", "PAY_RECEIVED", "reason", "the supplier credits two reels"));
        JsonNode done = goods.post("/invoices/" + id + "/approve", "P-FIN", Map.of());
        assertThat(done.get("toPay").get("minor").asLong()).isEqualTo(388_00);
    }

    @Test
    void one_invoice_over_two_orders_is_billed_against_both_or_neither() {
        BoughtGoods one = goods("BOTH");
        one.come("D-BOTH", 1, 1);
        BoughtGoods other = one.andAnother("BOTH-2");
        String csv = HEADER
                + "A-6,,2026-05-19,USD,PO-BOTH,,1,Band tape,1,1,XRL,48.50,\n"
                + ",,,,PO-BOTH-2,,2,Band tape,1,1,XRL,48.50,\n";
        JsonNode look = one.preview(csv);
        String id = one.post(
                        "/invoices",
                        "P-FIN",
                        Map.of(
                                "supplierId",
                                "S-BOTH",
                                "document",
                                look.get("document"),
                                "source",
                                "both.csv",
                                "lines",
                                List.of(bills("1", "PO-BOTH"), bills("2", "PO-BOTH-2"))))
                .get("invoiceId")
                .asString();

        assertThatThrownBy(() -> one.post("/invoices/" + id + "/approve", "P-FIN", Map.of()))
                .hasMessageContaining("order [PO-BOTH-2]")
                .hasMessageContaining("nothing has come");
        assertThat(billed(one)).as("nothing of it is billed").isZero();
        other.come("D-BOTH-2", 1, 1);
        one.post("/invoices/" + id + "/approve", "P-FIN", Map.of());
        assertThat(billed(one)).isEqualTo(BoughtGoods.REEL);
        assertThat(billed(other)).isEqualTo(BoughtGoods.REEL);
    }

    @Test
    void an_order_of_another_supplier_cannot_be_billed() {
        BoughtGoods mine = goods("MINE");
        goods("THEIRS");
        String id = mine.keep(HEADER + "A-11,,2026-05-19,USD,PO-MINE,,1,Band tape,1,1,XRL,48.50,\n");

        assertThatThrownBy(() -> mine.post(
                        "/invoices/" + id + "/link",
                        "P-FIN",
                        Map.of("line", "1", "purchaseId", "PO-THEIRS", "purchaseLine", 1, "priceOnly", false)))
                .hasMessageContaining("Order [PO-THEIRS] went to supplier [S-THEIRS]");
    }

    @Test
    void a_credit_note_lowers_the_price_again() {
        BoughtGoods goods = goods("CREDIT");
        goods.come("D-CREDIT", 1, 2);
        goods.post(
                "/invoices/" + goods.keep(HEADER + "A-7,,2026-05-19,USD,PO-CREDIT,,1,Band tape,1,2,XRL,48.50,\n")
                        + "/approve",
                "P-FIN",
                Map.of());
        String note = goods.keep(HEADER + "C-1,credit note,2026-05-26,USD,PO-CREDIT,,1,Band tape,1,1,XRL,7.01,\n");
        goods.post(
                "/invoices/" + note + "/link",
                "P-FIN",
                Map.of("line", "1", "purchaseId", "PO-CREDIT", "purchaseLine", 1, "priceOnly", true));

        JsonNode done = goods.post("/invoices/" + note + "/approve", "P-FIN", Map.of());
        assertThat(done.get("toPay").get("minor").asLong()).isEqualTo(-7_01);
        assertThat(cost(goods, 1)).as("the odd cent goes to the first").isEqualTo(48_50 - 3_51);
        assertThat(cost(goods, 2)).isEqualTo(48_50 - 3_50);
    }

    @Test
    void a_large_sum_needs_two_persons_who_are_not_the_same() {
        BoughtGoods goods = goods("TWO");
        goods.come("D-TWO", 1, 10);
        String id = goods.keep(HEADER
                + "A-8,,2026-05-19,USD,PO-TWO,,1,Band tape,1,10,XRL,48.50,\n"
                + ",,,,,charge,,Freight,,,,,600.00\n");

        JsonNode once = goods.post("/invoices/" + id + "/approve", "P-ANN", Map.of());
        assertThat(once.get("secondPersonNeeded").asBoolean()).isTrue();
        assertThat(billed(goods)).isZero();
        assertThatThrownBy(() -> goods.post("/invoices/" + id + "/approve", "P-ANN", Map.of()))
                .hasMessageContaining("Another person has to approve it as well");
        goods.post("/invoices/" + id + "/approve", "P-BEN", Map.of());
        assertThat(billed(goods)).isEqualTo(10 * BoughtGoods.REEL);
    }

    @Test
    void freight_of_an_invoice_is_spread_over_its_delivery_once_and_can_be_taken_back() {
        BoughtGoods goods = goods("CARRY");
        goods.come("D-CARRY", 1, 3);
        String id = goods.keep(HEADER
                + "A-9,,2026-05-19,USD,PO-CARRY,,1,Band tape,1,3,XRL,48.50,\n"
                + ",,,,,charge,,Freight,,,,,100.00\n");
        Map<String, Object> wish = Map.of(
                "landedCostId",
                "LC-CARRY",
                "what",
                "FREIGHT",
                "basis",
                "COUNT",
                "invoiceId",
                id,
                "amount",
                Map.of("minor", 100_00, "currency", "USD"),
                "deliveries",
                List.of("D-CARRY"));

        goods.post("/landed-costs", "P-FIN", wish);
        assertThat(List.of(cost(goods, 1), cost(goods, 2), cost(goods, 3)))
                .as("100.00 over three: 33.34, 33.33, 33.33")
                .containsExactly(48_50L + 33_34, 48_50L + 33_33, 48_50L + 33_33);
        assertThatThrownBy(() -> goods.post(
                        "/landed-costs",
                        "P-FIN",
                        Map.of(
                                "landedCostId",
                                "LC-CARRY-2",
                                "what",
                                "FREIGHT",
                                "basis",
                                "COUNT",
                                "invoiceId",
                                id,
                                "amount",
                                Map.of("minor", 1, "currency", "USD"),
                                "deliveries",
                                List.of("D-CARRY"))))
                .hasMessageContaining("charges of USD 0.00 left to spread, not USD 0.01");
        goods.post("/landed-costs/LC-CARRY/take-back", "P-FIN", Map.of("reason", "it was of another delivery"));
        assertThat(cost(goods, 1)).isEqualTo(48_50);
        assertThat(goods.get("/invoices/" + id)
                        .get("invoice")
                        .get("spread")
                        .get("minor")
                        .asLong())
                .isZero();
    }

    @Test
    void stock_is_written_down_and_the_list_says_why() {
        BoughtGoods goods = goods("DOWN");
        goods.come("D-DOWN", 1, 1);
        goods.post(
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

        JsonNode row = goods.get("/write-downs?limit=1").get("rows").get(0);
        assertThat(row.get("id").asString()).isEqualTo(goods.reel(1));
        assertThat(row.get("amount").get("minor").asLong()).isEqualTo(40_00);
        assertThat(row.get("reason").asString()).isEqualTo("adhesive out of date");
    }

    @Test
    void rebuilt_read_models_are_the_same_as_the_old_ones() {
        BoughtGoods goods = goods("AGAIN");
        goods.come("D-AGAIN", 1, 1);
        String id = goods.keep(HEADER + "A-10,,2026-05-19,USD,PO-AGAIN,,1,Band tape,1,1,XRL,48.50,\n");
        goods.post("/invoices/" + id + "/approve", "P-FIN", Map.of());
        JsonNode before = goods.get("/invoices/" + id);

        List.of("invoice", "billing", "landed-cost", "write-down", "tolerance").forEach(projectors::rebuild);

        assertThat(goods.get("/invoices/" + id)).isEqualTo(before);
    }

    private BoughtGoods goods(String name) {
        return new BoughtGoods(name, work, commands, projectors, "http://127.0.0.1:" + port, key);
    }

    private static Map<String, ?> bills(String line, String order) {
        return Map.of("line", line, "use", "GOODS", "purchaseId", order, "purchaseLine", 1, "priceOnly", false);
    }

    private static long billed(BoughtGoods goods) {
        return StreamSupport.stream(
                        goods.get("/invoices/order-lines?supplier=" + goods.supplier())
                                .get("rows")
                                .spliterator(),
                        false)
                .filter(row ->
                        row.get("purchaseId").asString().equals(goods.purchase().value()))
                .mapToLong(row -> row.get("billed").asLong())
                .sum();
    }

    private static long cost(BoughtGoods goods, int reel) {
        return goods.get("/reels/" + goods.reel(reel))
                .get("balance")
                .get("cost")
                .get("minor")
                .asLong();
    }
}
