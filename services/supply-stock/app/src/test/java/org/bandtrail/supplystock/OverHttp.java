package org.bandtrail.supplystock;

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

/**
 * Asks the running service as a client would: with the key, for a person, and waiting until what was written can be read.
 *
 * @param port where the service listens
 * @param key the key of the services
 * @param person for whom is asked
 */
public record OverHttp(int port, String key, String person) {
    /** The same client for another person. */
    public OverHttp as(String other) {
        return new OverHttp(port, key, other);
    }

    /** Reads; fails unless it is answered with 200. */
    public JsonNode get(String path) {
        return Objects.requireNonNull(client().get().uri(path).retrieve().body(JsonNode.class));
    }

    /** Reads a file. */
    public byte[] file(String path) {
        return Objects.requireNonNull(client().get().uri(path).retrieve().body(byte[].class));
    }

    /** Asks for something that is not given; fails unless it is refused with this status, and returns the reason. */
    public String notGiven(int status, String path) {
        return client().get().uri(path).exchange((request, response) -> {
            assertThat(response.getStatusCode().value()).as(path).isEqualTo(status);
            return JsonMapper.shared()
                    .readTree(response.getBody())
                    .path("detail")
                    .asString();
        });
    }

    /** Sends a wish under a fresh command id; fails unless it is granted. */
    public JsonNode ok(String path, String json) {
        ResponseEntity<JsonNode> answer = send(path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
        return Objects.requireNonNull(answer.getBody());
    }

    /** Sends a wish under a fresh command id; fails unless it is refused with this status, and returns the reason. */
    public String refused(int status, String path, String json) {
        ResponseEntity<JsonNode> answer = send(path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(status);
        return Objects.requireNonNull(answer.getBody()).path("detail").asString();
    }

    private ResponseEntity<JsonNode> send(String path, String json) {
        Map<String, Object> body =
                new HashMap<>(JsonMapper.shared().readValue(json, new TypeReference<Map<String, Object>>() {}));
        body.put("commandId", UUID.randomUUID());
        return client().post()
                .uri(path)
                .header("Prefer", "wait=10")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange((request, response) -> ResponseEntity.status(response.getStatusCode())
                        .body(JsonMapper.shared().readTree(response.getBody())));
    }

    private RestClient client() {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", person)
                .build();
    }
}
