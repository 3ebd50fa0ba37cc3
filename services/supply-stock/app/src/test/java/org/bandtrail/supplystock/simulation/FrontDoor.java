package org.bandtrail.supplystock.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.slittings.CostChanges;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The HTTP door of supply-stock for a simulation: a wish is granted or refused, and never breaks anything. */
final class FrontDoor {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private final RestClient client;
    private final Work work;
    private final CostChanges costs;
    private int granted;
    private int refused;

    FrontDoor(int port, String key, Work work, CostChanges costs) {
        this.client = RestClient.builder()
                .baseUrl("http://127.0.0.1:" + port)
                .defaultHeader("Authorization", "Bearer " + key)
                .defaultHeader("Bandtrail-Person", "P-SIM")
                .build();
        this.work = work;
        this.costs = costs;
    }

    int granted() {
        return granted;
    }

    int countRefused() {
        return refused;
    }

    void refused() {
        refused++;
    }

    /** Posts; the answer is 2xx, or 4xx with nothing changed. */
    void wish(String path, String body, Object... values) {
        ObjectNode command = (ObjectNode) JSON.readTree(values.length == 0 ? body : body.formatted(values));
        command.put("commandId", UUID.randomUUID().toString());
        ResponseEntity<String> answer = client.post()
                .uri(path)
                .contentType(MediaType.APPLICATION_JSON)
                .header("Prefer", "wait=10")
                .body(command.toString())
                .retrieve()
                .onStatus(status -> true, (request, response) -> {})
                .toEntity(String.class);
        assertThat(answer.getStatusCode().value())
                .as("%s %s: %s", path, command, answer.getBody())
                .isIn(200, 400, 404, 409, 422);
        if (answer.getStatusCode().is2xxSuccessful()) {
            granted++;
        } else {
            refused++;
        }
    }

    /** Changes the cost of a reel and of its strips, as an invoice does. */
    void revalue(String reel, long minor, Occurred occurred) {
        try {
            work.inOneTransaction(() -> {
                costs.reel(
                        new ReelId(reel),
                        CostChange.INVOICE_DIFFERENCE,
                        Money.of(minor, "USD"),
                        "invoice",
                        new PersonId("P-SIM"),
                        occurred);
                return true;
            });
            granted++;
        } catch (Refusal no) {
            refused++;
        }
    }

    JsonNode get(String path) {
        return JSON.readTree(client.get().uri(path).retrieve().body(String.class));
    }
}
