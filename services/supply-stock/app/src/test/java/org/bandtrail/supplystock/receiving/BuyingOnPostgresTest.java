package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.purchases.OnOrder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.JsonNode;

/** The read models of buying on a real PostgreSQL: what others read from them, a rebuild, and the same request twice. */
@OnPostgres
class BuyingOnPostgresTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Projectors projectors;

    @Autowired
    OnOrder onOrder;

    @Autowired
    Lots lots;

    private OverHttp http = new OverHttp(0, "");

    @BeforeEach
    void client() {
        http = new OverHttp(port, key);
    }

    private void bought(String mark) {
        http.ok("/items", """
                {"materialCode": "%s-PIN", "kind": "FASTENER", "name": "Push pins", "packSize": 100,
                 "unitCost": {"minor": 450, "currency": "USD"}}""".formatted(mark));
        http.ok("/items", """
                {"materialCode": "%s-MESH", "kind": "MESH", "name": "Guard mesh", "width": "305 mm", "opening": "12 mm",
                 "reelLength": "30 m", "unitCost": {"minor": 6200, "currency": "USD"}}""".formatted(mark));
        http.ok("/suppliers", "{\"supplierId\": \"%s-S\", \"name\": \"Holm\"}".formatted(mark));
        http.ok("/purchases", """
                {"purchaseId": "%s-PO", "supplierId": "%s-S", "depotId": "%s-YARD", "expectedOn": "2026-05-20",
                 "lines": [{"materialCode": "%s-MESH", "unitCode": "MTR", "units": 100, "grant": "G-7",
                            "unitPrice": {"minor": 207, "currency": "USD"}},
                           {"materialCode": "%s-PIN", "unitCode": "C62", "packageCode": "PK", "content": "100",
                            "units": 5, "unitPrice": {"minor": 450, "currency": "USD"}}]}""".formatted(mark, mark, mark, mark, mark));
        http.ok("/deliveries", """
                {"deliveryId": "%s-D", "purchaseId": "%s-PO", "depotId": "%s-YARD", "accept": true,
                 "lines": [{"purchaseLine": 1, "reels": [{"length": "30.5 m", "lot": "M 1"}, {"length": "29,5 m"}]},
                           {"purchaseLine": 2, "units": 3, "batches": [{"pieces": 298, "lot": "m 1"}]}]}""".formatted(mark, mark, mark));
    }

    @Test
    void what_is_on_order_and_what_is_committed_follow_the_deliveries() {
        bought("P1");

        assertThat(onOrder.toCome().get(new OnOrder.At("P1-MESH", "P1-YARD")))
                .extracting(OnOrder.ToCome::quantity)
                .isEqualTo(40_000L);
        assertThat(onOrder.toCome().get(new OnOrder.At("P1-PIN", "P1-YARD")))
                .extracting(OnOrder.ToCome::quantity)
                .isEqualTo(200L);
        // 40 m at 2.07 and two packs at 4.50
        assertThat(onOrder.committed().stream()
                        .filter(each -> each.materialCode().startsWith("P1"))
                        .map(each -> each.materialCode() + " " + each.grant() + " " + each.minor()))
                .containsExactly("P1-MESH G-7 8280", "P1-PIN null 900");
        // 60 m at 2.07 are 124.20, split by length: 30.5 / 60 and 29.5 / 60 of it
        assertThat(http.get("/deliveries/P1-D").path("lines").get(0).path("pieces"))
                .extracting(each -> each.path("cost").path("minor").asLong())
                .containsExactly(6_314L, 6_106L);
    }

    @Test
    void lot_and_expiry_are_found_whatever_the_spelling() {
        bought("P2");

        assertThat(lots.lot("reel", "P2-S-0001")).contains("M 1");
        assertThat(lots.expiry("reel", "P2-S-0001")).isEqualTo(Optional.empty());
        assertThat(lots.ofLot(" m  1", null, 1_000).stream()
                        .filter(each -> each.supplierId().equals("P2-S"))
                        .map(each -> each.holding() + " " + each.id()))
                .containsExactly("batch P2-S-0003", "reel P2-S-0001");
    }

    @Test
    void a_rebuild_gives_the_same_answers() {
        bought("P3");
        http.ok("/deliveries/P3-D/send-back", "{\"keys\": [\"reel/P3-S-0002\"], \"reason\": \"too short\"}");
        List<String> questions = List.of(
                "/purchases/P3-PO", "/deliveries/P3-D", "/suppliers/P3-S", "/lots?lot=M 1", "/purchases?limit=1");
        List<JsonNode> before = questions.stream().map(http::get).toList();

        for (String projection : List.of("supplier", "purchase", "delivery")) {
            projectors.rebuild(projection);
        }

        assertThat(questions.stream().map(http::get).toList()).isEqualTo(before);
        assertThat(before.getFirst().path("purchase").path("state").asString()).isEqualTo("partly received");
    }

    @Test
    void the_same_delivery_sent_twice_is_received_once() {
        bought("P4");
        String body = """
                {"commandId": "0197b9a0-0000-7000-8000-00000000d004", "deliveryId": "P4-D2", "purchaseId": "P4-PO",
                 "depotId": "P4-YARD", "accept": false, "lines": [{"purchaseLine": 1, "reels": [{"length": "40 m"}]}]}""";
        JsonNode first = http.ok("/deliveries", body);
        assertThat(http.ok("/deliveries", body)).isEqualTo(first);

        assertThat(http.get("/purchases/P4-PO")
                        .path("lines")
                        .get(0)
                        .path("received")
                        .asLong())
                .isEqualTo(100_000);
        assertThat(http.post("/deliveries", body.replace("00d004", "00d005"))
                        .getStatusCode()
                        .value())
                .as("the same delivery under another command")
                .isEqualTo(409);
    }

    @Test
    void what_somebody_released_elsewhere_is_accepted_and_cannot_be_accepted_again() {
        bought("P6");
        http.ok("/deliveries", """
                {"deliveryId": "P6-D2", "purchaseId": "P6-PO", "depotId": "P6-YARD", "accept": false,
                 "lines": [{"purchaseLine": 1, "reels": [{"reelId": "P6-R", "length": "40 m"}]}]}""");
        http.ok("/set-aside/release", "{\"reelId\": \"P6-R\", \"depotId\": \"P6-YARD\", \"reason\": \"looked at\"}");

        assertThat(state("P6-D2")).isEqualTo("accepted");
        ResponseEntity<JsonNode> again = http.post("/deliveries/P6-D2/accept", "{\"keys\": [\"reel/P6-R\"]}");
        assertThat(again.getStatusCode().value()).isEqualTo(409);
        assertThat(String.valueOf(again.getBody()))
                .contains("[reel/P6-R] of delivery [P6-D2] is accepted, not set aside.");
        assertThat(http.get("/reels/P6-R").path("balance").path("inDepotMm").asLong())
                .isEqualTo(40_000);
        assertThat(http.get("/deliveries?waiting=true").path("rows"))
                .extracting(each -> each.path("deliveryId").asString())
                .doesNotContain("P6-D2");
    }

    private String state(String delivery) {
        JsonNode line = http.get("/deliveries/" + delivery).path("lines").get(0);
        return line.path("pieces").get(0).path("state").asString();
    }

    @Test
    void labels_of_a_delivery_are_one_pdf_with_every_number_on_it() throws Exception {
        bought("P5");
        ResponseEntity<byte[]> answer = http.file("/labels.pdf?delivery=P5-D&sheet=letter-3x10&start=30");

        assertThat(answer.getHeaders().getContentType()).hasToString("application/pdf");
        try (PDDocument document = Loader.loadPDF(answer.getBody())) {
            assertThat(document.getNumberOfPages())
                    .as("one label on the first sheet, two on the next")
                    .isEqualTo(2);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("P5-S-0001", "P5-S-0002", "P5-S-0003", "298 pieces", "30.50 m / 100.1 ft", "lot M 1");
        }
        for (Map.Entry<String, Integer> wrong : Map.of(
                        "/labels.pdf?reel=NOBODY", 404, "/labels.pdf", 404, "/labels.pdf?delivery=P5-D&sheet=a5", 400)
                .entrySet()) {
            assertThat(http.file(wrong.getKey()).getStatusCode().value())
                    .as(wrong.getKey())
                    .isEqualTo(wrong.getValue());
        }
    }
}
