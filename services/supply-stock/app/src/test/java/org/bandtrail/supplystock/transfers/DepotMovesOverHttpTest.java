package org.bandtrail.supplystock.transfers;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.slittings.CostChanges;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Bins, vehicles, transfers, setting aside and slitting through the front door. */
@OnPostgres
class DepotMovesOverHttpTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @LocalServerPort
    int port;

    @Autowired
    Work work;

    @Autowired
    CostChanges costs;

    @Autowired
    Projectors projectors;

    @Value("${bandtrail.service-key}")
    String key = "";

    private void item(String code, String width) {
        ok("/items", """
                {"materialCode":"%s","kind":"TAPE","name":"Tape %s","width":"%s","reelLength":"50 m",
                 "unitCost":{"minor":4000,"currency":"USD"}}""".formatted(code, code, width));
    }

    private void reel(String id, String item, String length, long cents) {
        ok("/reels", """
                {"reelId":"%s","materialCode":"%s","depotId":"DM-N","length":"%s","cost":{"minor":%d,"currency":"USD"},
                 "happenedAt":"2026-05-04T06:00:00Z"}""".formatted(id, item, length, cents));
    }

    @Test
    void a_reel_goes_into_a_bin_is_sent_and_arrives_short() {
        item("DM-T", "127 mm");
        reel("DM-R1", "DM-T", "50 m", 1800);
        ok("/bins", """
                {"depotId":"DM-N","mark":"A-03","words":"tape"}""");
        ok("/bins/put", """
                {"depotId":"DM-N","mark":"A-03","reelId":"DM-R1"}""");
        assertThat(get("/bins/DM-N/A-03").path("contents").get(0).path("id").asString())
                .isEqualTo("DM-R1");

        ok("/transfers", """
                {"transferId":"DM-TR1","from":"depot:DM-N","to":"depot:DM-S","carrier":"P-08","reels":["DM-R1"]}""");
        assertThat(place("DM-R1", "in-transit:DM-TR1")).isEqualTo(50_000);
        assertThat(get("/transfers?state=on-its-way")
                        .path("rows")
                        .get(0)
                        .path("transferId")
                        .asString())
                .isEqualTo("DM-TR1");

        ok("/transfers/DM-TR1/arrive", """
                {"reels":[{"reelId":"DM-R1","measured":"49.5 m"}]}""");
        assertThat(place("DM-R1", "depot:DM-S")).isEqualTo(49_500);
        assertThat(place("DM-R1", "missing:P-08")).isEqualTo(500);
        JsonNode transfer = get("/transfers/DM-TR1");
        assertThat(transfer.path("oneHand").asBoolean())
                .as("sent and confirmed by one person")
                .isTrue();
        assertThat(transfer.path("lines").get(0).path("arrived").asLong()).isEqualTo(49_500);
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void a_transfer_that_is_called_off_brings_everything_back() {
        item("DM-T2", "127 mm");
        reel("DM-R2", "DM-T2", "20 m", 900);
        ok("/transfers", """
                {"transferId":"DM-TR2","from":"depot:DM-N","to":"depot:DM-S","carrier":"P-08","reels":["DM-R2"]}""");
        ok("/transfers/DM-TR2/call-off", """
                {"reason":"the truck broke down"}""");

        assertThat(place("DM-R2", "depot:DM-N")).isEqualTo(20_000);
    }

    @Test
    void one_line_that_fails_takes_the_whole_transfer_with_it() {
        item("DM-T3", "127 mm");
        reel("DM-R3", "DM-T3", "20 m", 900);
        ResponseEntity<String> answer = post("/transfers", """
                {"transferId":"DM-TR3","from":"depot:DM-N","to":"depot:DM-S","carrier":"P-08","reels":["DM-R3","DM-NONE"]}""");

        assertThat(answer.getStatusCode().value()).isEqualTo(409);
        assertThat(answer.getBody()).contains("Reel [DM-NONE]");
        assertThat(place("DM-R3", "depot:DM-N")).isEqualTo(20_000);
    }

    @Test
    void a_vehicle_is_loaded_and_unloaded_and_what_is_set_aside_stays() {
        item("DM-T4", "127 mm");
        reel("DM-R4", "DM-T4", "20 m", 900);
        ok("/vehicles", """
                {"vehicleId":"DM-V1","name":"Green truck","depotId":"DM-N"}""");
        ok("/vehicles/DM-V1/load", """
                {"depotId":"DM-N","reels":["DM-R4"]}""");
        assertThat(place("DM-R4", "vehicle:DM-V1")).isEqualTo(20_000);
        ok("/vehicles/DM-V1/unload", """
                {"depotId":"DM-S","reels":["DM-R4"]}""");
        ok("/set-aside", """
                {"depotId":"DM-S","reelId":"DM-R4","reason":"glue looks dry"}""");

        assertThat(post("/handouts", """
                        {"kitId":"DM-K1","depotId":"DM-S","crewId":"C","personId":"P-09","reels":["DM-R4"],
                         "happenedAt":"2026-05-05T06:00:00Z"}""").getStatusCode().value()).isEqualTo(409);
        JsonNode aside = get("/set-aside?depot=DM-S").path("rows").get(0);
        assertThat(aside.path("why").asString()).isEqualTo("glue looks dry");

        ok("/set-aside/release", """
                {"depotId":"DM-S","reelId":"DM-R4","reason":"tested, it holds"}""");
        assertThat(place("DM-R4", "depot:DM-S")).isEqualTo(20_000);
    }

    @Test
    void a_wide_reel_becomes_strips_and_a_later_invoice_difference_follows_them() {
        item("DM-W", "381 mm");
        item("DM-N", "127 mm");
        reel("DM-W1", "DM-W", "50 m", 100_00);
        JsonNode done = ok("/slittings", """
                {"slittingId":"DM-S1","reelId":"DM-W1","depotId":"DM-N","trim":"0 mm","strips":[
                 {"reelId":"DM-W1-A","materialCode":"DM-N"},{"reelId":"DM-W1-B","materialCode":"DM-N"},
                 {"reelId":"DM-W1-C","materialCode":"DM-N"}]}""");

        assertThat(done.path("costs"))
                .extracting(cost -> cost.path("minor").asLong())
                .containsExactly(33_34L, 33_33L, 33_33L);
        JsonNode slitting = get("/slittings/DM-S1");
        assertThat(slitting.path("areaInMm2").asLong())
                .isEqualTo(50_000L * 381)
                .isEqualTo(slitting.path("areaOutMm2").asLong());
        assertThat(place("DM-W1", "slit:DM-S1")).isEqualTo(50_000);

        work.inOneTransaction(() -> {
            costs.reel(
                    new ReelId("DM-W1"),
                    CostChange.INVOICE_DIFFERENCE,
                    Money.of(-1_00, "USD"),
                    "invoice I-1",
                    new PersonId("P-17"),
                    Occurred.at(Instant.parse("2026-06-01T08:00:00Z")));
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(get("/slittings/DM-S1").path("cost").path("minor").asLong()).isEqualTo(99_00);
        assertThat(place("DM-W1-A", "depot:DM-N")).isEqualTo(50_000);
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
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
