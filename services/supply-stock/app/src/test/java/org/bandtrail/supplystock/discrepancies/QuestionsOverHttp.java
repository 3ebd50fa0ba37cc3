package org.bandtrail.supplystock.discrepancies;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
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
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reels out with people, and what they tell, for tests of open questions through the front door. */
abstract class QuestionsOverHttp {
    static final DepotId DEPOT = new DepotId("DQ");
    static final Instant MORNING = Instant.parse("2026-05-04T07:00:00Z");
    static final Place TREE = Place.tree(new TreeId("DQ-T1"));

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

    void out(String reel, PersonId person) {
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

    void fitted(String reel, PersonId person, String length) {
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

    void back(String reel, PersonId person, String measured) {
        send(new ReelCommand.Return(
                new ReelId(reel),
                person,
                DEPOT,
                Length.parse(measured),
                person,
                Occurred.at(MORNING.plus(Duration.ofHours(4)))));
    }

    void send(ReelCommand... wanted) {
        work.inOneTransaction(() -> {
            for (ReelCommand command : wanted) {
                commands.send(command);
            }
            return wanted.length;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    JsonNode question(String id) {
        for (JsonNode row : get("/discrepancies").path("rows")) {
            if (row.path("id").asString().equals(id)) {
                return row;
            }
        }
        return JsonMapper.shared().missingNode();
    }

    void ok(String path, String json) {
        ResponseEntity<String> answer = post(path, json);
        assertThat(answer.getStatusCode().value())
                .as(path + ": " + answer.getBody())
                .isEqualTo(200);
    }

    String refused(String path, String json) {
        ResponseEntity<String> answer = post(path, json);
        assertThat(answer.getStatusCode().is4xxClientError())
                .as(answer.toString())
                .isTrue();
        return Objects.requireNonNull(answer.getBody());
    }

    ResponseEntity<String> post(String path, String json) {
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

    JsonNode get(String path) {
        return Objects.requireNonNull(client().get().uri(path).retrieve().body(JsonNode.class));
    }

    JsonNode getAfter(String cursor) {
        return Objects.requireNonNull(client().get()
                .uri(uri -> uri.path("/discrepancies")
                        .queryParam("after", "{after}")
                        .build(cursor))
                .retrieve()
                .body(JsonNode.class));
    }

    RestClient client() {
        return RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", "P-01")
                .build();
    }
}
