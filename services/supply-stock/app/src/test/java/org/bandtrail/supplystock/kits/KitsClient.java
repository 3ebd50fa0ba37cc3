package org.bandtrail.supplystock.kits;

import org.bandtrail.supplystock.OverHttp;
import tools.jackson.databind.JsonNode;

/** The front door as a client uses it, with one depot, one tape and one pin of its own for each test. */
final class KitsClient {
    private final OverHttp counter;
    private final String depot;

    KitsClient(int port, String key, String depot) {
        this.counter = new OverHttp(port, key, "P-01");
        this.depot = depot;
    }

    /** Registers the tape, mesh and pin of this depot. */
    KitsClient items() {
        item(depot + "-TAPE", "\"kind\": \"TAPE\", \"width\": \"127 mm\", \"reelLength\": \"50 m\"");
        item(depot + "-MESH", "\"kind\": \"MESH\", \"width\": \"300 mm\", \"opening\": \"12 mm\", \"reelLength\": \"25 m\"");
        item(depot + "-PIN", "\"kind\": \"FASTENER\", \"packSize\": 100");
        return this;
    }

    private void item(String code, String fields) {
        ok("/items", """
                {"materialCode": "%s", "name": "%s", "unitCost": {"minor": 1800, "currency": "USD"}, %s}""".formatted(code, code, fields));
    }

    /** Receives a reel of this depot's tape. */
    void reel(String id, String length, String received) {
        ok("/reels", """
                {"reelId": "%s", "materialCode": "%s-TAPE", "depotId": "%s", "length": "%s",
                 "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "%s"}""".formatted(id, depot, depot, length, received));
    }

    /** Receives a batch of this depot's pins. */
    void batch(String id, int pieces) {
        ok("/batches", """
                {"batchId": "%s", "materialCode": "%s-PIN", "depotId": "%s", "pieces": %d,
                 "cost": {"minor": 500, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}""".formatted(id, depot, depot, pieces));
    }

    /** A kit of tape and pins for trees given as JSON. */
    String kit(String id, String trees) {
        return """
                {"kitId": "%s", "depotId": "%s", "crewId": "C-1", "personId": "%s-P", "tape": "%s-TAPE",
                 "fastener": "%s-PIN", "trees": [%s], "happenedAt": "2026-05-04T07:00:00Z"}""".formatted(id, depot, depot, depot, depot, trees);
    }

    JsonNode ok(String path, String json) {
        return counter.ok(path, json);
    }

    /** Asks as somebody else. */
    JsonNode as(String person, String path, String json) {
        return counter.as(person).ok(path, json);
    }

    /** The reason of a refusal because the books say otherwise. */
    String refused(String person, String path, String json) {
        return counter.as(person).refused(409, path, json);
    }

    JsonNode get(String path) {
        return counter.get(path);
    }

    byte[] file(String path) {
        return counter.file(path);
    }
}
