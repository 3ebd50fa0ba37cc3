package org.bandtrail.supplystock.audits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The depot's part of the main job through the front door, as a client would do it. */
@OnPostgres
class StockOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Test
    void a_kit_goes_out_and_comes_back_short_and_the_audit_names_who_to_ask() {
        item("HT-TAPE", Map.of("kind", "TAPE", "width", "5 in", "reelLength", "55 yd"));
        item("HT-PIN", Map.of("kind", "FASTENER", "packSize", 100));
        reel("HT-R1", "HT-TAPE", "50 m");
        batch("HT-B1", 100);
        batch("HT-B2", 100);

        JsonNode kit = ok("/handouts", json("""
                {"kitId": "HT-K1", "depotId": "HT", "crewId": "HT-C", "personId": "HT-P", "reels": ["HT-R1"],
                 "fasteners": [{"materialCode": "HT-PIN", "pieces": 150}], "happenedAt": "2026-05-04T07:00:00Z"}"""));
        assertThat(kit.path("lines"))
                .as("fasteners come from the oldest batch first")
                .extracting(line ->
                        line.path("id").asString() + " " + line.path("quantity").asLong())
                .containsExactly("HT-R1 50000", "HT-B1 100", "HT-B2 50");

        JsonNode back = ok("/returns", json("""
                {"personId": "HT-P", "depotId": "HT", "reels": [{"reelId": "HT-R1", "measured": "162 ft 6 in"}],
                 "happenedAt": "2026-05-04T17:00:00Z"}"""));
        assertThat(back.path("lines").get(0).path("difference").asLong()).isEqualTo(49_530 - 50_000);

        JsonNode audit = get("/audit");
        assertThat(audit.path("zero").asBoolean()).isTrue();
        assertThat(audit.path("findings"))
                .extracting(finding -> finding.path("sentence").asString())
                .contains("The books expected 0.470 m more of reel HT-R1 back from HT-P.");

        ok(
                "/discrepancies/settle",
                Map.of("material", "reel", "id", "HT-R1", "place", "missing:HT-P", "reason", "left on the last site"));
        assertThat(get("/audit").path("findings"))
                .noneMatch(finding -> finding.path("id").asString().equals("HT-R1"));
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void the_same_request_twice_does_its_work_once_and_other_content_under_its_id_is_refused() {
        item("TW-TAPE", Map.of("kind", "TAPE", "width", "127 mm", "reelLength", "50 m"));
        Map<String, Object> request = withId(json("""
                {"reelId": "TW-R1", "materialCode": "TW-TAPE", "depotId": "TW", "length": "50 m",
                 "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}"""));

        JsonNode first = post("/reels", request).getBody();
        JsonNode again = post("/reels", request).getBody();
        assertThat(again).isEqualTo(first);

        Map<String, Object> other = new java.util.HashMap<>(request);
        other.put("length", "60 m");
        assertThat(post("/reels", other).getStatusCode().value()).isEqualTo(422);
        assertThat(get("/reels/TW-R1").path("balance").path("receivedMm").asLong())
                .isEqualTo(50_000);
    }

    @Test
    void a_wish_that_fails_in_its_second_line_changes_nothing() {
        item("AL-TAPE", Map.of("kind", "TAPE", "width", "127 mm", "reelLength", "50 m"));
        reel("AL-R1", "AL-TAPE", "50 m");

        ResponseEntity<JsonNode> refused = post("/handouts", withId(json("""
                {"kitId": "AL-K1", "depotId": "AL", "crewId": "AL-C", "personId": "AL-P", "reels": ["AL-R1", "AL-R2"],
                 "happenedAt": "2026-05-04T07:00:00Z"}""")));

        assertThat(refused.getStatusCode().value()).isEqualTo(409);
        assertThat(refused.getHeaders().getContentType()).isEqualTo(MediaType.APPLICATION_PROBLEM_JSON);
        assertThat(String.valueOf(refused.getBody())).contains("AL-R2");
        assertThat(get("/reels/AL-R1").path("balance").path("place").asString()).isEqualTo("depot:AL");
    }

    @Test
    void a_length_without_a_unit_is_answered_with_what_to_write() {
        ResponseEntity<JsonNode> answer = post("/reels", withId(json("""
                {"reelId": "NU-R1", "materialCode": "NU-TAPE", "depotId": "NU", "length": "50",
                 "cost": {"minor": 1, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}""")));

        assertThat(answer.getStatusCode().value()).isEqualTo(400);
        assertThat(String.valueOf(answer.getBody())).contains("[50]").contains("unit");
    }

    @Test
    void without_the_key_nothing_is_told() {
        int status = RestClient.create("http://127.0.0.1:" + port)
                .get()
                .uri("/reels")
                .exchange((request, response) -> response.getStatusCode().value());

        assertThat(status).isEqualTo(401);
    }

    private void item(String code, Map<String, Object> fields) {
        Map<String, Object> body = new java.util.HashMap<>(fields);
        body.putAll(Map.of("materialCode", code, "name", code, "unitCost", Map.of("minor", 1800, "currency", "USD")));
        ok("/items", body);
    }

    private void reel(String id, String code, String length) {
        ok("/reels", json("""
                {"reelId": "%s", "materialCode": "%s", "depotId": "%s", "length": "%s",
                 "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}""".formatted(id, code, id.substring(0, 2), length)));
    }

    private void batch(String id, int pieces) {
        ok("/batches", json("""
                {"batchId": "%s", "materialCode": "HT-PIN", "depotId": "HT", "pieces": %d,
                 "cost": {"minor": 500, "currency": "USD"}, "happenedAt": "2026-04-2%sT08:00:00Z"}""".formatted(id, pieces, id.charAt(4))));
    }

    private static Map<String, Object> json(String text) {
        return JsonMapper.shared().readValue(text, new TypeReference<>() {});
    }

    private static Map<String, Object> withId(Map<String, Object> fields) {
        Map<String, Object> body = new java.util.HashMap<>(fields);
        body.put("commandId", UUID.randomUUID());
        return body;
    }

    private JsonNode ok(String path, Map<String, Object> fields) {
        ResponseEntity<JsonNode> answer = post(path, withId(fields));
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
        return java.util.Objects.requireNonNull(answer.getBody());
    }

    private ResponseEntity<JsonNode> post(String path, Map<String, Object> body) {
        return client().post()
                .uri(path)
                .header("Prefer", "wait=10")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange((request, response) -> ResponseEntity.status(response.getStatusCode())
                        .headers(response.getHeaders())
                        .body(JsonMapper.shared().readTree(response.getBody())));
    }

    private JsonNode get(String path) {
        return java.util.Objects.requireNonNull(
                client().get().uri(path).retrieve().body(JsonNode.class));
    }

    private RestClient client() {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", "P-01")
                .build();
    }
}
