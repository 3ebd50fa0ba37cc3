package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.JsonNode;

/** Goods released on the page of what is set aside are accepted for their delivery too. */
@OnPostgres
class ReleasedByHandTest {
    private static final String TAPE_SIZE = "\"width\": \"5 in\", \"reelLength\": \"50 m\"";
    private static final String PACK = "\"packSize\": 100";

    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    private OverHttp http = new OverHttp(0, "");

    @BeforeEach
    void client() {
        http = new OverHttp(port, key);
    }

    private void delivered(String mark, String kind, String goods) {
        http.ok("/items", """
                {"materialCode": "%s-IT", "kind": "%s", "name": "Goods", %s,
                 "unitCost": {"minor": 3900, "currency": "USD"}}""".formatted(mark, kind, kind.equals("TAPE") ? TAPE_SIZE : PACK));
        http.ok("/suppliers", "{\"supplierId\": \"%s-SUP\", \"name\": \"Holm and daughters\"}".formatted(mark));
        http.ok("/deliveries", """
                {"deliveryId": "%s-D", "supplierId": "%s-SUP", "depotId": "%s-YARD", "accept": false, "lines": [
                  {"materialCode": "%s-IT", "cost": {"minor": 1000, "currency": "USD"}, %s}]}""".formatted(mark, mark, mark, mark, goods));
    }

    private void release(String mark, String what) {
        http.ok("/set-aside/release", """
                {"depotId": "%s-YARD", %s, "reason": "looked at it, it is sound"}""".formatted(mark, what));
    }

    private ResponseEntity<JsonNode> accept(String mark, String what) {
        return http.post("/deliveries/%s-D/accept".formatted(mark), "{\"keys\": [\"%s\"]}".formatted(what));
    }

    private String state(String mark) {
        JsonNode line =
                http.get("/deliveries/%s-D".formatted(mark)).path("lines").get(0);
        return line.path("pieces").get(0).path("state").asString();
    }

    @Test
    void a_reel_released_by_hand_is_not_accepted_again() {
        delivered("RH1", "TAPE", "\"reels\": [{\"reelId\": \"RH1-A\", \"length\": \"50 m\"}]");
        assertThat(state("RH1")).isEqualTo("set aside");
        release("RH1", "\"reelId\": \"RH1-A\"");
        assertThat(state("RH1")).isEqualTo("accepted");

        ResponseEntity<JsonNode> again = accept("RH1", "reel/RH1-A");

        assertThat(again.getStatusCode().value()).isEqualTo(409);
        assertThat(String.valueOf(again.getBody())).contains("is accepted, not set aside");
    }

    @Test
    void of_a_batch_released_in_part_the_rest_waits_for_the_delivery() {
        delivered("RH2", "FASTENER", "\"batches\": [{\"batchId\": \"RH2-A\", \"pieces\": 100}]");
        release("RH2", "\"batchId\": \"RH2-A\", \"pieces\": 60");
        assertThat(state("RH2")).isEqualTo("set aside");

        assertThat(accept("RH2", "batch/RH2-A").getStatusCode().value()).isEqualTo(200);

        assertThat(state("RH2")).isEqualTo("accepted");
        assertThat(http.get("/batches/RH2-A")
                        .path("balance")
                        .path("inDepotPieces")
                        .asLong())
                .isEqualTo(100);
    }

    @Test
    void a_batch_released_in_two_parts_is_accepted_with_the_second() {
        delivered("RH3", "FASTENER", "\"batches\": [{\"batchId\": \"RH3-A\", \"pieces\": 100}]");
        release("RH3", "\"batchId\": \"RH3-A\", \"pieces\": 60");
        release("RH3", "\"batchId\": \"RH3-A\", \"pieces\": 40");

        assertThat(state("RH3")).isEqualTo("accepted");
        assertThat(accept("RH3", "batch/RH3-A").getStatusCode().value()).isEqualTo(409);
    }
}
