package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.bandtrail.supplystock.AtOnce;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.JsonNode;

/** Two vans of one supplier stand at two doors at once: no number is ever given to two reels. */
@OnPostgres
class NumbersAtOnceTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    private OverHttp http = new OverHttp(0, "");

    @BeforeEach
    void client() {
        http = new OverHttp(port, key);
    }

    private void known(String mark) {
        http.ok("/items", """
                {"materialCode": "%s-TAPE", "kind": "TAPE", "name": "Tape", "width": "5 in", "reelLength": "50 m",
                 "unitCost": {"minor": 3900, "currency": "USD"}}""".formatted(mark));
        http.ok("/suppliers", "{\"supplierId\": \"%s-SUP\", \"name\": \"Holm and daughters\"}".formatted(mark));
    }

    private ResponseEntity<JsonNode> deliver(String mark, int number, String reels) {
        return http.post("/deliveries", """
                {"deliveryId": "%1$s-D%2$d", "supplierId": "%1$s-SUP", "depotId": "%1$s-YARD", "accept": true, "lines": [
                  {"materialCode": "%1$s-TAPE", "cost": {"minor": 1000, "currency": "USD"}, "reels": [%3$s]}]}""".formatted(mark, number, reels));
    }

    private static List<ResponseEntity<JsonNode>> atOnce(int count, IntFunction<ResponseEntity<JsonNode>> one) {
        return AtOnce.all(IntStream.range(0, count)
                .mapToObj(number -> (Callable<ResponseEntity<JsonNode>>) () -> one.apply(number))
                .toList());
    }

    @Test
    void deliveries_at_once_get_numbers_of_their_own_or_are_refused_by_name() {
        known("NA");

        List<ResponseEntity<JsonNode>> answers = atOnce(
                6,
                number ->
                        deliver("NA", number, "{\"length\": \"50 m\"}, {\"length\": \"%d m\"}".formatted(40 + number)));

        List<String> given = new ArrayList<>();
        for (ResponseEntity<JsonNode> answer : answers) {
            String told = String.valueOf(answer.getBody());
            assertThat(answer.getStatusCode().value()).as(told).isIn(200, 409);
            if (answer.getStatusCode().value() == 409) {
                assertThat(told).contains("NA-SUP-");
            } else {
                Objects.requireNonNull(answer.getBody()).path("keys").forEach(one -> given.add(one.asString()));
            }
        }
        assertThat(given).isNotEmpty().doesNotHaveDuplicates();
        for (String reel : given) {
            JsonNode balance =
                    http.get("/reels/" + reel.substring("reel/".length())).path("balance");
            assertThat(balance.path("receivedMm").asLong()).as(reel).isBetween(40_000L, 50_000L);
        }
        assertThat(http.get("/audit?recount=true").path("zero").asBoolean()).isTrue();
    }

    @Test
    void of_those_who_write_the_same_number_on_two_reels_only_one_is_taken_in() {
        known("NB");

        List<ResponseEntity<JsonNode>> answers =
                atOnce(4, number -> deliver("NB", number, "{\"reelId\": \"NB-OWN\", \"length\": \"50 m\"}"));

        assertThat(answers)
                .extracting(answer -> answer.getStatusCode().value())
                .containsExactlyInAnyOrder(200, 409, 409, 409);
        assertThat(answers)
                .filteredOn(answer -> answer.getStatusCode().value() == 409)
                .allMatch(answer -> String.valueOf(answer.getBody()).contains("[NB-OWN]"));
        JsonNode reel = http.get("/reels/NB-OWN").path("balance");
        assertThat(reel.path("receivedMm").asLong()).isEqualTo(50_000);
    }
}
