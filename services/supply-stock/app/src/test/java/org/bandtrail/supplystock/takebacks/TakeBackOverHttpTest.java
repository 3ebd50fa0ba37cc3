package org.bandtrail.supplystock.takebacks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Taking back what was put, set aside or loaded a moment ago, through the front door. */
@OnPostgres
class TakeBackOverHttpTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private final String own = UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
    private final String reel = "TB-" + own;

    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @BeforeEach
    void a_reel_lies_in_a_bin() {
        ok("/items", """
                {"materialCode":"TB-T%s","kind":"TAPE","name":"Tape","width":"127 mm","reelLength":"50 m",
                 "unitCost":{"minor":4000,"currency":"USD"}}""".formatted(own));
        ok("/reels", """
                {"reelId":"%s","materialCode":"TB-T%s","depotId":"TB-N","length":"50 m",
                 "cost":{"minor":1800,"currency":"USD"},"happenedAt":"2026-05-04T06:00:00Z"}""".formatted(reel, own));
        post("/bins", """
                {"depotId":"TB-N","mark":"A-03"}""");
        ok("/bins/put", """
                {"depotId":"TB-N","mark":"A-03","reelId":"%s"}""".formatted(reel));
    }

    @Test
    void a_loaded_reel_goes_back_into_the_bin_it_came_from() {
        post("/vehicles", """
                {"vehicleId":"TB-V1","name":"Green truck","depotId":"TB-N"}""");
        JsonNode loaded = ok("/vehicles/TB-V1/load", """
                {"depotId":"TB-N","reels":["%s"]}""".formatted(reel));
        assertThat(place(reel, "vehicle:TB-V1")).isEqualTo(50_000);

        JsonNode back = ok("/take-backs", asked(loaded));

        assertThat(back.path("lines").get(0).path("place").asString()).isEqualTo("depot:TB-N/A-03");
        assertThat(place(reel, "depot:TB-N/A-03")).isEqualTo(50_000);
        assertThat(get("/reels/" + reel).path("history").size())
                .as("received, put in its bin, loaded, unloaded: nothing is deleted")
                .isEqualTo(4);
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void what_was_set_aside_is_released_and_what_was_released_is_set_aside() {
        JsonNode aside = ok("/set-aside", """
                {"depotId":"TB-N","reelId":"%s","reason":"wrong reel scanned"}""".formatted(reel));
        ok("/take-backs", asked(aside));
        assertThat(place(reel, "depot:TB-N/A-03")).isEqualTo(50_000);

        ok("/set-aside", """
                {"depotId":"TB-N","reelId":"%s","reason":"glue looks dry"}""".formatted(reel));
        JsonNode released = ok("/set-aside/release", """
                {"depotId":"TB-N","reelId":"%s","reason":"tested"}""".formatted(reel));
        ok("/take-backs", asked(released));
        assertThat(place(reel, "set-aside:TB-N")).isEqualTo(50_000);
    }

    @Test
    void what_somebody_else_moved_since_is_not_taken_back() {
        JsonNode aside = ok("/set-aside", """
                {"depotId":"TB-N","reelId":"%s","reason":"wrong reel scanned"}""".formatted(reel));
        ok("/set-aside/release", """
                {"depotId":"TB-N","reelId":"%s","reason":"looked at"}""".formatted(reel));

        ResponseEntity<String> answer = post("/take-backs", asked(aside));

        assertThat(answer.getStatusCode().value()).isEqualTo(409);
        assertThat(answer.getBody()).contains(reel + "] was moved again since");
        assertThat(place(reel, "depot:TB-N")).isEqualTo(50_000);
    }

    private String asked(JsonNode done) {
        return """
                {"reels":["%s"],"at":"%s"}""".formatted(reel, done.path("at").asString());
    }

    private long place(String reel, String place) {
        for (JsonNode each : get("/reels/" + reel).path("places")) {
            if (each.path("place").asString().equals(place)) {
                return each.path("quantity").asLong();
            }
        }
        return 0;
    }

    private JsonNode ok(String path, String body) {
        ResponseEntity<String> answer = post(path, body);
        assertThat(answer.getStatusCode().value()).as(answer.getBody()).isEqualTo(200);
        return JSON.readTree(answer.getBody());
    }

    private ResponseEntity<String> post(String path, String body) {
        ObjectNode command = (ObjectNode) JSON.readTree(body);
        command.put("commandId", UUID.randomUUID().toString());
        return client().post()
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON)
                .header("Prefer", "wait=10")
                .body(command.toString())
                .retrieve()
                .onStatus(status -> true, (request, answer) -> {})
                .toEntity(String.class);
    }

    private JsonNode get(String path) {
        return JSON.readTree(client().get().uri(path).retrieve().body(String.class));
    }

    private RestClient client() {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeaders(headers -> Map.of("Authorization", "Bearer " + key, "Bandtrail-Person", "P-01")
                        .forEach(headers::set))
                .build();
    }
}
