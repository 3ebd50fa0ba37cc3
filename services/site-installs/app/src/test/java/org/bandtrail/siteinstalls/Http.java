package org.bandtrail.siteinstalls;

import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.MultiValueMap;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Speaks HTTP with the service under test, as the front desk does. */
public final class Http {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final AtomicLong COMMANDS = new AtomicLong();
    private final RestClient client;

    public Http(int port) {
        this.client = RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader(HttpHeaders.AUTHORIZATION, "Bearer " + OnPostgres.KEY)
                .defaultHeader("Bandtrail-Person", "P-07")
                .defaultStatusHandler(status -> true, (request, response) -> {})
                .build();
    }

    /** An answer with its status. */
    public record Answer(int status, JsonNode body) {}

    /** A new command id; UUIDv7 in form, counted up so that tests repeat. */
    public static String commandId() {
        return new UUID(
                        0x019B_0000_0000_7000L | (COMMANDS.get() >> 48),
                        0x8000_0000_0000_0000L | COMMANDS.incrementAndGet())
                .toString();
    }

    public Answer post(String path, String json) {
        return answer(client.post()
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON)
                .body(json)
                .retrieve()
                .toEntity(String.class));
    }

    public Answer upload(String path, MultiValueMap<String, ?> form) {
        return answer(client.post()
                .uri(path)
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(form)
                .retrieve()
                .toEntity(String.class));
    }

    public Answer get(String path) {
        return answer(client.get().uri(path).retrieve().toEntity(String.class));
    }

    private static Answer answer(ResponseEntity<String> response) {
        @Nullable String body = response.getBody();
        return new Answer(
                response.getStatusCode().value(), body == null ? JSON.createObjectNode() : JSON.readTree(body));
    }
}
