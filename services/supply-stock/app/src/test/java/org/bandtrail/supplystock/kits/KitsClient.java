package org.bandtrail.supplystock.kits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The front door as a client uses it, with one depot, one tape and one pin of its own for each test. */
final class KitsClient {
    private final int port;
    private final String key;
    private final String depot;

    KitsClient(int port, String key, String depot) {
        this.port = port;
        this.key = key;
        this.depot = depot;
    }

    /** Registers the tape, mesh and pin of this depot. */
    KitsClient items() {
        item(depot + "-TAPE", "\"kind\": \"TAPE\", \"width\": \"127 mm\", \"reelLength\": \"50 m\"");
        item(depot + "-MESH", "\"kind\": \"MESH\", \"width\": \"300 mm\", \"opening\": \"12 mm\", \"reelLength\": \"25 m\"");
        item(depot + "-PIN", "\"kind\": \"FASTENER\", \"packSize\": 100");
        return this;
    }

    private void item(String code, String fields) {
        ok("/items", """
                {"materialCode": "%s", "name": "%s", "unitCost": {"minor": 1800, "currency": "USD"}, %s}""".formatted(code, code, fields));
    }

    /** Receives a reel of this depot's tape. */
    void reel(String id, String length, String received) {
        ok("/reels", """
                {"reelId": "%s", "materialCode": "%s-TAPE", "depotId": "%s", "length": "%s",
                 "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "%s"}""".formatted(id, depot, depot, length, received));
    }

    /** Receives a batch of this depot's pins. */
    void batch(String id, int pieces) {
        ok("/batches", """
                {"batchId": "%s", "materialCode": "%s-PIN", "depotId": "%s", "pieces": %d,
                 "cost": {"minor": 500, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}""".formatted(id, depot, depot, pieces));
    }

    /** A kit of tape and pins for trees given as JSON. */
    String kit(String id, String trees) {
        return """
                {"kitId": "%s", "depotId": "%s", "crewId": "C-1", "personId": "%s-P", "tape": "%s-TAPE",
                 "fastener": "%s-PIN", "trees": [%s], "happenedAt": "2026-05-04T07:00:00Z"}""".formatted(id, depot, depot, depot, depot, trees);
    }

    JsonNode ok(String path, String json) {
        return as("P-01", path, json);
    }

    JsonNode as(String person, String path, String json) {
        ResponseEntity<JsonNode> answer = post(person, path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
        return Objects.requireNonNull(answer.getBody());
    }

    /** The reason of a refusal. */
    String refused(String person, String path, String json) {
        ResponseEntity<JsonNode> answer = post(person, path, json);
        assertThat(answer.getStatusCode().value()).as(path + ": " + answer.getBody()).isEqualTo(409);
        return Objects.requireNonNull(answer.getBody()).path("detail").asString();
    }

    private ResponseEntity<JsonNode> post(String person, String path, String json) {
        Map<String, Object> body = new HashMap<>(JsonMapper.shared().readValue(json, new TypeReference<>() {}));
        body.put("commandId", UUID.randomUUID());
        return client(person)
                .post()
                .uri(path)
                .header("Prefer", "wait=10")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange((request, response) -> ResponseEntity.status(response.getStatusCode())
                        .body(JsonMapper.shared().readTree(response.getBody())));
    }

    JsonNode get(String path) {
        return Objects.requireNonNull(client("P-01").get().uri(path).retrieve().body(JsonNode.class));
    }

    byte[] file(String path) {
        return Objects.requireNonNull(client("P-01").get().uri(path).retrieve().body(byte[].class));
    }

    private RestClient client(String person) {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", person)
                .build();
    }
}
