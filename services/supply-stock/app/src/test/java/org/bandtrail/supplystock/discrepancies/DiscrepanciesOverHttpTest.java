package org.bandtrail.supplystock.discrepancies;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
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

/** Open questions through the front door: causes from the books, and each way to end one. */
@OnPostgres
class DiscrepanciesOverHttpTest {
    private static final DepotId DEPOT = new DepotId("DQ");
    private static final Instant MORNING = Instant.parse("2026-05-04T07:00:00Z");
    private static final Place TREE = Place.tree(new TreeId("DQ-T1"));

    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Test
    void a_piece_told_of_the_reel_one_number_off_moves_to_the_right_one() {
        PersonId person = new PersonId("P-31");
        out("DQ-12", person);
        out("DQ-13", person);
        // 1.25 m really came off 12 and was told of 13.
        fitted("DQ-13", person, "1.25 m");
        back("DQ-12", person, "48.75 m");
        back("DQ-13", person, "50 m");

        JsonNode open = question("DQ-12");
        assertThat(open.path("worth").path("minor").asLong())
                .as("1.25 m of 50 m for 18.00")
                .isEqualTo(45);
        assertThat(open.path("lastHolder").asString()).isEqualTo("P-31");
        JsonNode cause = open.path("causes").get(0);
        assertThat(cause.path("kind").asString()).isEqualTo("WRONG_LABEL");
        assertThat(cause.path("other").asString()).isEqualTo("DQ-13");
        assertThat(cause.path("through").asString()).isEqualTo("tree:DQ-T1");
        assertThat(cause.path("evidence").asString()).contains("DQ-13 has 1.250 m more recorded");

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-12", "place": "missing:P-31", "through": "tree:DQ-T1", "other": "DQ-13",
                 "reason": "label read wrong"}""");

        assertThat(question("DQ-12").isMissingNode()).isTrue();
        assertThat(question("DQ-13").isMissingNode()).isTrue();
        assertThat(get("/reels/DQ-12")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isEqualTo(45);
        assertThat(get("/reels/DQ-13")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isZero();
        assertThat(get("/reels/DQ-12").path("history").toString()).contains("put right", "label read wrong");
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void a_piece_that_went_into_a_bag_since_is_put_right_where_it_is_now() {
        PersonId person = new PersonId("P-36");
        out("DQ-92", person);
        fitted("DQ-93", person, "1.187 m");
        back("DQ-92", person, "48.813 m");
        Place bag = Place.bag(new BagId("DQ-BAG"));
        send(new ReelCommand.RecordFact(
                new ReelId("DQ-93"),
                "taken down",
                TREE,
                bag,
                Length.parse("1.187 m"),
                null,
                person,
                Occurred.at(MORNING.plus(Duration.ofDays(20)))));

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-93", "place": "crew:P-36", "through": "tree:DQ-T1", "other": "DQ-92",
                 "reason": "label read wrong"}""");

        assertThat(question("DQ-92").isMissingNode()).isTrue();
        assertThat(question("DQ-93").isMissingNode()).isTrue();
        assertThat(get("/reels/DQ-92").path("balance").path("inBagMm").asLong()).isEqualTo(1_187);
        // 1.187 m of 50 m for 18.00 are 42.73 cents.
        assertThat(get("/reels/DQ-92")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isEqualTo(43);
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void what_turned_up_is_put_back_as_measured_and_the_rest_can_be_written_off() {
        PersonId person = new PersonId("P-32");
        out("DQ-21", person);
        back("DQ-21", person, "40 m");

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "measured": "9.5 m",
                 "reason": "offcut found in the truck"}""");
        assertThat(question("DQ-21").path("quantity").asLong()).isEqualTo(500);
        assertThat(get("/reels/DQ-21").path("balance").path("inDepotMm").asLong())
                .isEqualTo(49_500);
        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "measured": "1 m",
                 "reason": "more"}""")).contains("DQ-21");

        ok("/discrepancies/settle", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "reason": "torn off and thrown away"}""");
        assertThat(question("DQ-21").isMissingNode()).isTrue();
        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "reason": "again"}""")).contains("agree");
    }

    @Test
    void another_reel_that_has_nothing_opposite_is_refused_and_nothing_moves() {
        PersonId person = new PersonId("P-33");
        out("DQ-41", person);
        back("DQ-41", person, "49 m");
        out("DQ-49", new PersonId("P-39"));

        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-41", "place": "missing:P-33", "through": "tree:DQ-T1", "other": "DQ-49",
                 "reason": "perhaps"}""")).contains("DQ-49");
        assertThat(question("DQ-41").path("quantity").asLong()).isEqualTo(1_000);
    }

    @Test
    void a_question_waits_and_comes_back_when_its_amount_changes() {
        PersonId person = new PersonId("P-34");
        out("DQ-51", person);
        back("DQ-51", person, "45 m");
        LocalDate until = LocalDate.now(ZoneOffset.UTC).plusDays(14);

        ok("/discrepancies/wait", """
                {"material": "reel", "id": "DQ-51", "place": "missing:P-34", "until": "%s",
                 "reason": "the telephone is in repair"}""".formatted(until));
        assertThat(question("DQ-51").path("waitsUntil").asString()).isEqualTo(until.toString());
        assertThat(get("/discrepancies?waiting=false").toString()).doesNotContain("DQ-51");
        projectors.rebuild("waiting-question");
        assertThat(get("/discrepancies?waiting=false").toString()).doesNotContain("DQ-51");

        fitted("DQ-51", person, "2 m");
        assertThat(question("DQ-51").path("quantity").asLong()).isEqualTo(3_000);
        assertThat(get("/discrepancies?waiting=false").toString()).contains("DQ-51");
        assertThat(refused("/discrepancies/wait", """
                {"material": "reel", "id": "DQ-51", "place": "missing:P-34", "until": "2020-01-01", "reason": "x"}""")).contains("2020-01-01");
    }

    @Test
    void the_list_goes_on_where_a_page_ended() {
        PersonId person = new PersonId("P-35");
        for (String reel : new String[] {"DQ-61", "DQ-71", "DQ-81"}) {
            out(reel, person);
            back(reel, person, "44 m");
        }

        JsonNode all = get("/discrepancies").path("rows");
        JsonNode first = get("/discrepancies?limit=2");
        JsonNode second = getAfter(first.path("next").asString());

        assertThat(first.path("rows")).hasSize(2);
        assertThat(second.path("rows").get(0).path("id")).isEqualTo(all.get(2).path("id"));
    }

    private void out(String reel, PersonId person) {
        send(
                new ReelCommand.Receive(
                        new ReelId(reel),
                        new MaterialCode("DQ-TAPE"),
                        MaterialKind.TAPE,
                        Length.parse("50 m"),
                        Money.of(1_800, "USD"),
                        Place.depot(DEPOT),
                        person,
                        Occurred.at(MORNING)),
                new ReelCommand.HandOut(
                        new ReelId(reel), new KitId("K-DQ"), DEPOT, person, person, Occurred.at(MORNING)));
    }

    private void fitted(String reel, PersonId person, String length) {
        send(new ReelCommand.RecordFact(
                new ReelId(reel),
                "band B-DQ",
                Place.crew(person),
                TREE,
                Length.parse(length),
                new SiteId("DQ-S"),
                person,
                Occurred.at(MORNING.plus(Duration.ofHours(3)))));
    }

    private void back(String reel, PersonId person, String measured) {
        send(new ReelCommand.Return(
                new ReelId(reel),
                person,
                DEPOT,
                Length.parse(measured),
                person,
                Occurred.at(MORNING.plus(Duration.ofHours(4)))));
    }

    private void send(ReelCommand... wanted) {
        work.inOneTransaction(() -> {
            for (ReelCommand command : wanted) {
                commands.send(command);
            }
            return wanted.length;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    private JsonNode question(String id) {
        for (JsonNode row : get("/discrepancies").path("rows")) {
            if (row.path("id").asString().equals(id)) {
                return row;
            }
        }
        return JsonMapper.shared().missingNode();
    }

    private void ok(String path, String json) {
        ResponseEntity<String> answer = post(path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
    }

    private String refused(String path, String json) {
        ResponseEntity<String> answer = post(path, json);
        assertThat(answer.getStatusCode().is4xxClientError())
                .as(answer.toString())
                .isTrue();
        return Objects.requireNonNull(answer.getBody());
    }

    private ResponseEntity<String> post(String path, String json) {
        Map<String, Object> body =
                new HashMap<>(JsonMapper.shared().readValue(json, new TypeReference<Map<String, Object>>() {}));
        body.put("commandId", UUID.randomUUID());
        return client().post()
                .uri(path)
                .header("Prefer", "wait=10")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange((request, response) -> ResponseEntity.status(response.getStatusCode())
                        .body(new String(response.getBody().readAllBytes(), StandardCharsets.UTF_8)));
    }

    private JsonNode get(String path) {
        return Objects.requireNonNull(client().get().uri(path).retrieve().body(JsonNode.class));
    }

    private JsonNode getAfter(String cursor) {
        return Objects.requireNonNull(client().get()
                .uri(uri -> uri.path("/discrepancies")
                        .queryParam("after", "{after}")
                        .build(cursor))
                .retrieve()
                .body(JsonNode.class));
    }

    private RestClient client() {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", "P-01")
                .build();
    }
}
