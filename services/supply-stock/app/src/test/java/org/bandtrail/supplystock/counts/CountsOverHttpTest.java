package org.bandtrail.supplystock.counts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A depot is counted blind, counted again, explained and approved, through the front door. */
@OnPostgres
class CountsOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Counts counts;

    @Autowired
    Projectors projectors;

    @Test
    void a_count_shows_no_book_figure_until_all_is_counted_and_posts_only_when_approved() {
        item("CA-TAPE");
        reel("CA-R1", "CA");
        reel("CA-R2", "CA");
        ok("P-01", "/counts", """
                {"countId": "CA-1", "place": "depot:CA"}""");

        JsonNode blind = get("/counts/CA-1");
        assertThat(blind.path("lines")).hasSize(2);
        assertThat(blind.toString()).doesNotContain("50000", "1800");
        assertThat(refused("P-01", "/counts", """
                {"countId": "CA-2", "place": "depot:CA/A-01"}""")).contains("CA-1");

        ok("P-07", "/counts/CA-1/lines", """
                {"id": "CA-R1", "measured": "49.5 m"}""");
        ok("P-07", "/counts/CA-1/lines", """
                {"id": "ca-r2", "measured": "50 m"}""");
        ok("P-07", "/counts/CA-1/finish", "{}");
        assertThat(get("/counts/CA-1").path("lines").get(0).path("toRecount").asBoolean())
                .isTrue();
        assertThat(get("/counts/CA-1").toString()).doesNotContain("49500", "50000");
        assertThat(refused("P-07", "/counts/CA-1/lines", """
                {"id": "CA-R1", "measured": "49.5 m"}""")).contains("somebody else");
        ok("P-08", "/counts/CA-1/lines", """
                {"id": "CA-R1", "measured": "49.5 m"}""");
        ok("P-08", "/counts/CA-1/finish", "{}");

        JsonNode review = get("/counts/CA-1");
        assertThat(review.path("count").path("stage").asString()).isEqualTo("REVIEW");
        JsonNode line = review.path("lines").get(0);
        assertThat(line.path("book").asLong()).isEqualTo(50_000);
        assertThat(line.path("difference").asLong()).isEqualTo(-500);
        // 500 mm of 50 m for 18.00.
        assertThat(line.path("value").path("minor").asLong()).isEqualTo(18);
        assertThat(line.path("countedBy").toString()).isEqualTo("[\"P-07\",\"P-08\"]");
        assertThat(get("/reels/CA-R1").path("balance").path("inDepotMm").asLong())
                .as("nothing posted yet")
                .isEqualTo(50_000);

        // What leaves after the sheet was frozen is not undone by the approval.
        ok("P-01", "/handouts", """
                {"kitId": "CA-K1", "depotId": "CA", "crewId": "CA-C", "personId": "P-09", "reels": ["CA-R2"],
                 "happenedAt": "2026-05-04T07:00:00Z"}""");
        assertThat(refused("P-01", "/counts/CA-1/approve", "{}")).contains("reason");
        ok("P-01", "/counts/CA-1/reasons", """
                {"holding": "reel", "id": "CA-R1", "place": "depot:CA", "reason": "torn end thrown away"}""");
        ok("P-01", "/counts/CA-1/approve", "{}");
        JsonNode reel = get("/reels/CA-R1");
        assertThat(reel.path("balance").path("inDepotMm").asLong()).isEqualTo(49_500);
        assertThat(get("/reels/CA-R2").path("balance").path("withCrewMm").asLong())
                .isEqualTo(50_000);
        assertThat(reel.path("history").toString()).contains("count CA-1: torn end thrown away");
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();

        JsonNode plan = get("/count-plan?depot=CA").path("rows");
        assertThat(plan).hasSize(1);
        assertThat(plan.get(0).path("due").asBoolean()).isFalse();
        assertThat(plan.get(0).path("lastCountedAt").isNull()).isFalse();
    }

    @Test
    void a_reel_found_on_the_shelf_that_the_books_have_with_a_person_was_brought_back() {
        item("CB-TAPE");
        reel("CB-R1", "CB");
        ok("P-01", "/handouts", """
                {"kitId": "CB-K1", "depotId": "CB", "crewId": "CB-C", "personId": "P-09", "reels": ["CB-R1"],
                 "happenedAt": "2026-05-04T07:00:00Z"}""");
        ok("P-01", "/counts", """
                {"countId": "CB-1", "place": "depot:CB"}""");
        ok("P-01", "/counts/CB-1/lines", """
                {"id": "CB-R1", "measured": "48 m"}""");
        ok("P-01", "/counts/CB-1/finish", "{}");
        ok("P-01", "/counts/CB-1/lines", """
                {"id": "CB-R1", "measured": "48 m", "alone": true}""");
        ok("P-01", "/counts/CB-1/finish", "{}");
        ok("P-01", "/counts/CB-1/reasons", """
                {"holding": "reel", "id": "CB-R1", "place": "depot:CB", "reason": "left on the shelf after the round"}""");
        assertThat(refused("P-01", "/counts/CB-1/approve", "{}"))
                .as("48 m are worth 17.28, but the threshold of 50.00 is not reached")
                .isEqualTo("");

        assertThat(get("/reels/CB-R1").path("balance").path("inDepotMm").asLong())
                .isEqualTo(48_000);
        assertThat(get("/reels/CB-R1").path("balance").path("missingMm").asLong())
                .isEqualTo(2_000);
    }

    @Test
    void a_cancelled_count_posts_nothing_and_rebuilt_lists_are_the_same() {
        item("CC-TAPE");
        reel("CC-R1", "CC");
        ok("P-01", "/counts", """
                {"countId": "CC-1", "place": "depot:CC"}""");
        ok("P-01", "/counts/CC-1/lines", """
                {"id": "CC-R1", "measured": "1 m"}""");
        ok("P-01", "/counts/CC-1/lines", """
                {"id": "CC-R1", "measured": "2 m"}""");
        ok("P-01", "/counts/CC-1/cancel", """
                {"reason": "delivery came in between"}""");
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
        CountRow.Whole before = counts.whole("CC-1").orElseThrow();

        projectors.rebuild("count");

        assertThat(counts.whole("CC-1").orElseThrow()).isEqualTo(before);
        assertThat(before.count().stage()).isEqualTo("CANCELLED");
        assertThat(before.lines().getFirst().countedBy()).containsExactly("P-01");
        assertThat(get("/reels/CC-R1").path("balance").path("inDepotMm").asLong())
                .isEqualTo(50_000);
    }

    @Test
    void rules_of_counting_are_kept_with_their_source() {
        ok("P-01", "/counts/rules", """
                {"rules": {"toleranceMm": 100, "tolerancePieces": 5, "tolerancePermille": 5,
                  "secondPersonFromMinor": 5000, "basis": "LYING", "shareA": 800, "shareB": 950, "daysA": 31,
                  "daysB": 91, "daysC": 365}, "source": "our own counts", "reason": "nothing was used yet"}""");

        JsonNode all = get("/counts/rules").path("rows");
        assertThat(all.get(0).path("rules").path("daysA").asInt()).isEqualTo(31);
        assertThat(all.get(all.size() - 1).path("source").asString()).isEqualTo("common practice, no source");
        assertThat(get("/count-plan/classes").path("rows").isArray()).isTrue();
    }

    private void item(String code) {
        ok("P-01", "/items", """
                {"materialCode": "%s", "name": "Tape", "kind": "TAPE", "width": "5 in", "reelLength": "50 m",
                 "unitCost": {"minor": 1800, "currency": "USD"}}""".formatted(code));
    }

    private void reel(String id, String depot) {
        ok("P-01", "/reels", """
                {"reelId": "%s", "materialCode": "%s-TAPE", "depotId": "%s", "length": "50 m",
                 "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}""".formatted(id, depot, depot));
    }

    private void ok(String person, String path, String json) {
        ResponseEntity<String> answer = post(person, path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
    }

    /** What a refusal says; empty if it was not refused. */
    private String refused(String person, String path, String json) {
        ResponseEntity<String> answer = post(person, path, json);
        return answer.getStatusCode().is4xxClientError() ? Objects.requireNonNull(answer.getBody()) : "";
    }

    private ResponseEntity<String> post(String person, String path, String json) {
        Map<String, Object> body =
                new HashMap<>(JsonMapper.shared().readValue(json, new TypeReference<Map<String, Object>>() {}));
        body.put("commandId", UUID.randomUUID());
        return client(person)
                .post()
                .uri(path)
                .header("Prefer", "wait=10")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange((request, response) -> ResponseEntity.status(response.getStatusCode())
                        .body(new String(response.getBody().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)));
    }

    private JsonNode get(String path) {
        return Objects.requireNonNull(client("P-01").get().uri(path).retrieve().body(JsonNode.class));
    }

    private RestClient client(String person) {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", person)
                .build();
    }
}
