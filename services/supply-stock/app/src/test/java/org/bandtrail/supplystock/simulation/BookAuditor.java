package org.bandtrail.supplystock.simulation;

import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Adds up the stored events of reels and batches with pencil and paper: it knows the names of the fields on disk and none
 * of the service's classes.
 */
final class BookAuditor {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Holding ({@code reel R-1}), then place, then millimetres or pieces; nothing that is zero. */
    final Map<String, Map<String, Long>> places = new TreeMap<>();

    /** Holding, then account, then minor units; {@code cost} is what it cost altogether. */
    final Map<String, Map<String, Long>> money = new TreeMap<>();

    /** Slitting, then what wide reels paid in less what strips were received with; nothing that is zero. */
    final Map<String, Long> slittings = new TreeMap<>();

    /** Reads everything whose aggregate identity contains this text. */
    static BookAuditor of(JdbcClient jdbc, String prefix) {
        BookAuditor auditor = new BookAuditor();
        jdbc.sql("""
                        SELECT payload_type, convert_from(payload, 'UTF8') FROM domain_event_entry
                        WHERE type IN ('reel', 'batch') AND aggregate_identifier LIKE '%' || ? || '%'
                        ORDER BY global_index""").param(prefix).query(row -> {
            auditor.add(row.getString(1), JSON.readTree(row.getString(2)));
        });
        auditor.places.values().forEach(each -> each.values().removeIf(quantity -> quantity == 0));
        auditor.places.values().removeIf(Map::isEmpty);
        auditor.slittings.values().removeIf(minor -> minor == 0);
        return auditor;
    }

    private void add(String name, JsonNode event) {
        String holding = event.has("reelId")
                ? "reel " + event.path("reelId").asString()
                : "batch " + event.path("batchId").asString();
        for (JsonNode move : event.path("entry").path("moves")) {
            long quantity = move.path("quantity").asLong();
            count(places, holding, move.path("source").asString(), -quantity);
            count(places, holding, move.path("target").asString(), quantity);
        }
        for (JsonNode charge : event.path("entry").path("charges")) {
            String account = charge.path("account").asString();
            long minor = charge.path("minor").asLong();
            count(money, holding, account.startsWith("slit:") ? "slit" : account, minor);
            if (account.startsWith("slit:")) {
                slittings.merge(account, minor, Long::sum);
            }
        }
        String step = name.substring(name.indexOf('.') + 1);
        switch (step) {
            case "received" -> count(money, holding, "cost", minor(event.path("cost")));
            case "made-by-slitting" -> {
                count(money, holding, "cost", minor(event.path("cost")));
                slittings.merge("slit:" + event.path("slitting").asString(), -minor(event.path("cost")), Long::sum);
            }
            case "sent-back" -> count(money, holding, "cost", -minor(event.path("cost")));
            case "cost-changed" -> {
                count(money, holding, "cost", minor(event.path("delta")));
                if (event.path("why").asString().equals("FROM_WIDE_REEL")) {
                    slittings.merge(
                            "slit:" + event.path("reference").asString(), -minor(event.path("delta")), Long::sum);
                }
            }
            default -> {} // every other event only moves and charges
        }
    }

    private static long minor(JsonNode money) {
        return money.path("minor").asLong();
    }

    private static void count(Map<String, Map<String, Long>> sums, String holding, String what, long amount) {
        sums.computeIfAbsent(holding, unused -> new TreeMap<>()).merge(what, amount, Long::sum);
    }

    /** Minor units of a holding on all accounts that begin so. */
    long paid(String holding, String account) {
        return money.getOrDefault(holding, Map.of()).entrySet().stream()
                .filter(each -> each.getKey().startsWith(account))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }
}
