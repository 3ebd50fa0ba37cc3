package org.bandtrail.supplystock.invoicematches;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventstore.Projectors;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;

/** Speaks to the running service as a finance officer does; what was told is readable when a call returns. */
final class FinanceDesk {
    private final RestClient http;
    private final Projectors projectors;

    FinanceDesk(String url, String key, Projectors projectors) {
        this.projectors = projectors;
        this.http = RestClient.builder()
                .baseUrl(url)
                .defaultHeader("Authorization", "Bearer " + key)
                .build();
    }

    void caughtUp() {
        if (!projectors.caughtUp(Duration.ofSeconds(10))) {
            throw new AssertionError("The read models did not catch up.");
        }
    }

    JsonNode get(String path) {
        return Objects.requireNonNull(http.get().uri(path).retrieve().body(JsonNode.class));
    }

    /** A command with an id of its own. */
    JsonNode post(String path, String person, Map<String, ?> body) {
        Map<String, Object> sent = new HashMap<>(body);
        sent.putIfAbsent("commandId", UUID.randomUUID().toString());
        JsonNode answer = ask(path, person, sent);
        caughtUp();
        return answer;
    }

    JsonNode preview(String csv, String source, String supplier) {
        String content = Base64.getEncoder().encodeToString(csv.getBytes(StandardCharsets.UTF_8));
        return ask("/invoices/preview", "P-FIN", Map.of("content", content, "source", source, "supplierId", supplier));
    }

    /** Keeps a file as its preview shows it, each line with what it most probably bills; the invoice's identity. */
    String keep(String csv, String source, String supplier) {
        JsonNode preview = preview(csv, source, supplier);
        return post(
                        "/invoices",
                        "P-FIN",
                        Map.of(
                                "supplierId",
                                supplier,
                                "document",
                                preview.get("document"),
                                "source",
                                source,
                                "lines",
                                preview.get("choices")))
                .get("invoiceId")
                .asString();
    }

    private JsonNode ask(String path, String person, Map<String, ?> body) {
        return Objects.requireNonNull(http.post()
                .uri(path)
                .header("Bandtrail-Person", person)
                .header("Content-Type", "application/json")
                .body(body)
                .retrieve()
                .body(JsonNode.class));
    }
}
