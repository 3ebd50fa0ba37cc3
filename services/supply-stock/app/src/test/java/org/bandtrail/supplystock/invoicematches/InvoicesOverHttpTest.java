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

        String id = goods.keep(csv);
        assertThatThrownBy(() -> goods.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of()))
                .isInstanceOf(HttpClientErrorException.Conflict.class)
                .hasMessageContaining("Line 1 costs USD 396.00; by the order it would be USD 388.00");
        goods.desk()
                .post(
                        "/invoices/" + id + "/settle",
                        "P-FIN",
                        Map.of("line", "1", "how", "ACCEPTED", "reason", "price of May, agreed by mail"));
        JsonNode done = goods.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of());

        assertThat(done.get("toPay").get("minor").asLong()).isEqualTo(396_00);
        assertThat(done.get("carried").size()).isEqualTo(8);
        assertThat(StreamSupport.stream(done.get("carried").spliterator(), false)
                        .mapToLong(each -> each.get("amount").get("minor").asLong())
                        .sum())
                .isEqualTo(8_00);
        JsonNode reel = goods.desk().get("/reels/" + goods.reel(1)).get("balance");
        assertThat(reel.get("cost").get("minor").asLong()).isEqualTo(49_50);
        assertThat(reel.get("charged").get("minor").asLong())
                .as("a quarter of 49.50 is 12.375, rounded up")
                .isEqualTo(12_38);
        JsonNode match = goods.desk().get("/invoices/" + id);
        assertThat(match.get("invoice").get("state").asString()).isEqualTo("approved");
        assertThat(match.get("matches").get(0).get("carried").get("minor").asLong())
                .isEqualTo(8_00);
        assertThat(match.get("matches").get(0).get("billedBefore").asLong()).isZero();
    }

    @Test
    void a_preview_matches_every_line_and_stores_nothing() {
        BoughtGoods goods = goods("LOOK");
        goods.come("D-LOOK", 1, 8);

        JsonNode look = goods.preview(HEADER + "A-0,,2026-05-19,USD,PO-LOOK,,1,Band tape,1,8,XRL,49.50,\n");

        assertThat(look.get("lines").get(0).get("verdict").asString()).isEqualTo("price differs");
        assertThat(look.get("lines").get(0).get("billed").asLong()).isEqualTo(8 * BoughtGoods.REEL);
        assertThat(goods.desk().get("/invoices?supplier=S-LOOK").get("rows").size())
                .isZero();
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
        goods.desk().post("/invoices/" + first + "/approve", "P-FIN", Map.of());
        String second = goods.keep(HEADER + "A-4,,2026-05-26,USD,PO-PART,,1,Band tape,1,7,XRL,48.50,\n");

        assertThatThrownBy(() -> goods.desk().post("/invoices/" + second + "/approve", "P-FIN", Map.of()))
                .hasMessageContaining("bills 320.040 m after 137.160 m before; 182.880 m was received");
        goods.come("D-PART-2", 5, 6);
        JsonNode done = goods.desk().post("/invoices/" + second + "/approve", "P-FIN", Map.of());
        assertThat(done.get("carried").size()).isZero();
        assertThat(goods.desk()
                        .get("/invoices/order-lines?supplier=S-PART")
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
        goods.desk().post("/invoices/" + id + "/hold", "P-FIN", Map.of("line", "1", "reason", "two reels are missing"));
        assertThat(goods.desk()
                        .get("/invoices/" + id)
                        .get("invoice")
                        .get("state")
                        .asString())
                .isEqualTo("held");

        goods.desk()
                .post(
                        "/invoices/" + id + "/settle",
                        "P-FIN",
                        Map.of("line", "1", "how", "PAY_RECEIVED", "reason", "the supplier credits two reels"));
        JsonNode done = goods.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of());
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
        String id = one.desk()
                .post(
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

        assertThatThrownBy(() -> one.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of()))
                .hasMessageContaining("order [PO-BOTH-2]")
                .hasMessageContaining("nothing has come");
        assertThat(one.billed()).as("nothing of it is billed").isZero();
        other.come("D-BOTH-2", 1, 1);
        one.desk().post("/invoices/" + id + "/approve", "P-FIN", Map.of());
        assertThat(one.billed()).isEqualTo(BoughtGoods.REEL);
        assertThat(other.billed()).isEqualTo(BoughtGoods.REEL);
    }

    private BoughtGoods goods(String name) {
        return new BoughtGoods(name, work, commands, projectors, "http://127.0.0.1:" + port, key);
    }

    private static Map<String, ?> bills(String line, String order) {
        return Map.of("line", line, "use", "GOODS", "purchaseId", order, "purchaseLine", 1, "priceOnly", false);
    }
}
