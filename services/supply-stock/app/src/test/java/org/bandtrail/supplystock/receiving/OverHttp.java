package org.bandtrail.supplystock.receiving;

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

/** A client of the service that writes requests as JSON texts. */
final class OverHttp {
    private final RestClient client;

    OverHttp(int port, String key) {
        this.client = RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", "P-LEAD")
                .defaultHeader("Prefer", "wait=2")
                .defaultStatusHandler(status -> true, (request, response) -> {})
                .build();
    }

    /** Sends a command that must be done; the command id is added. */
    JsonNode ok(String path, String body) {
        ResponseEntity<JsonNode> answer = post(path, body);
        assertThat(answer.getStatusCode().value())
                .as(path + " " + answer.getBody())
                .isEqualTo(200);
        return Objects.requireNonNull(answer.getBody());
    }

    ResponseEntity<JsonNode> post(String path, String body) {
        Map<String, Object> fields = new HashMap<>(JsonMapper.shared().readValue(body, new TypeReference<>() {}));
        fields.putIfAbsent("commandId", UUID.randomUUID().toString());
        return client.post()
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON)
                .body(fields)
                .retrieve()
                .toEntity(JsonNode.class);
    }

    JsonNode get(String path) {
        return Objects.requireNonNull(client.get().uri(path).retrieve().body(JsonNode.class));
    }

    ResponseEntity<byte[]> file(String path) {
        return client.get().uri(path).retrieve().toEntity(byte[].class);
    }
}
