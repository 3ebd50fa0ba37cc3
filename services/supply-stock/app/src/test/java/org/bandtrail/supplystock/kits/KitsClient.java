package org.bandtrail.supplystock.kits;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import tools.jackson.databind.JsonNode;

/**
 * The front door as a client uses it, and the field as its services tell it.
 *
 * @param counter asks as the one at the counter
 * @param depot depot of this test; its items, reels and people begin with its name
 */
record KitsClient(OverHttp counter, String depot, Work work, Commands commands, Projectors projectors) {
    /** Two trees by girth, one of them with two bands, and one with a ready length. */
    static final String TREES = """
        {"treeId": "T-1", "girth": "1260 mm"}, {"treeId": "T-2", "girth": "4 ft", "bands": 2},
        {"treeId": "T-3", "tape": "900 mm", "fasteners": 5}\
        """;

    /** R1 is full; R2 came later and something was cut from it, so it goes first; 100 pins in one batch. */
    KitsClient stocked() {
        item("TAPE", "\"kind\": \"TAPE\", \"width\": \"127 mm\", \"reelLength\": \"50 m\"");
        item("PIN", "\"kind\": \"FASTENER\", \"packSize\": 100");
        reel("R1", "50 m", "2026-04-20T08:00:00Z");
        reel("R2", "10 m", "2026-04-21T08:00:00Z");
        ok("/batches", own("""
            {"batchId": "D-B1", "materialCode": "D-PIN", "depotId": "D-", "pieces": 100,
             "cost": {"minor": 500, "currency": "USD"}, "happenedAt": "2026-04-20T08:00:00Z"}\
            """));
        ok("/handouts", own("""
            {"kitId": "D-K0", "depotId": "D-", "crewId": "C-1", "personId": "D-Z", "reels": ["D-R2"],
             "happenedAt": "2026-04-22T07:00:00Z"}\
            """));
        told("R2", "Z", "T-0", 7_000, "2026-04-22T09:00:00Z");
        ok("/returns", own("""
            {"personId": "D-Z", "depotId": "D-", "reels": [{"reelId": "D-R2", "measured": "3 m"}],
             "happenedAt": "2026-04-22T17:00:00Z"}\
            """));
        return this;
    }

    /** A text in which {@code D-} stands for this depot's name before an identity, or for the depot itself. */
    String own(String text) {
        return text.replace("\"D-\"", "\"" + depot + "\"").replace("\"D-", "\"" + depot + "-");
    }

    private void item(String code, String fields) {
        ok("/items", """
            {"materialCode": "%1$s-%2$s", "name": "%2$s", %3$s,
             "unitCost": {"minor": 1800, "currency": "USD"}}\
            """.formatted(depot, code, fields));
    }

    private void reel(String id, String length, String received) {
        ok("/reels", own("""
            {"reelId": "D-%s", "materialCode": "D-TAPE", "depotId": "D-", "length": "%s",
             "cost": {"minor": 1800, "currency": "USD"}, "happenedAt": "%s"}\
            """.formatted(id, length, received)));
    }

    /** A kit of tape and pins for trees given as JSON. */
    String kit(String id, String trees) {
        return own("""
            {"kitId": "D-%s", "depotId": "D-", "crewId": "C-1", "personId": "D-P", "tape": "D-TAPE",
             "fastener": "D-PIN", "trees": [%s], "happenedAt": "2026-05-04T07:00:00Z"}\
            """.formatted(id, trees));
    }

    /** Reserves the kit K1 for the usual trees and hands it out at ten past seven. */
    KitsClient out() {
        ok("/kits", kit("K1", TREES));
        ok(path("K1") + "/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        return this;
    }

    /** Where a kit of this depot is. */
    String path(String kit) {
        return "/kits/" + depot + "-" + kit;
    }

    JsonNode ok(String path, String json) {
        return counter.ok(path, json);
    }

    /** The reason of a refusal because the books say otherwise. */
    String refused(String path, String json) {
        return counter.refused(409, path, json);
    }

    JsonNode get(String path) {
        return counter.get(path);
    }

    /** The field tells that somebody cut this from a reel for a tree; the books learn of it on 6 May. */
    void told(String reel, String person, String tree, long mm, String happened) {
        PersonId by = new PersonId(depot + "-" + person);
        send(new ReelCommand.RecordFact(
                new ReelId(depot + "-" + reel),
                "band B-1",
                Place.crew(by),
                Place.tree(new TreeId(tree)),
                Length.ofMm(mm),
                new SiteId("S-1"),
                by,
                new Occurred(Instant.parse(happened), Instant.parse("2026-05-06T08:00:00Z"))));
    }

    void send(ReelCommand command) {
        work.inOneTransaction(() -> {
            commands.send(command);
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    String state(String kit) {
        return get(path(kit)).path("kit").path("state").asString();
    }

    /** One line of a settlement as handed out = fitted + returned + scrapped + missing + still out. */
    String line(String kit, String id) {
        for (JsonNode line : get(path(kit)).path("settlement").path("lines")) {
            if (line.path("id").asString().equals(depot + "-" + id)) {
                return "%d = %d + %d + %d + %d + %d"
                        .formatted(
                                line.path("handedOut").asLong(),
                                line.path("fitted").asLong(),
                                line.path("returned").asLong(),
                                line.path("scrapped").asLong(),
                                line.path("missing").asLong(),
                                line.path("stillOut").asLong());
            }
        }
        return "no line of " + id;
    }

    /** What was with a person or crew, as identity and quantity. */
    List<String> withPerson(String asked) {
        return get("/custody?" + own(asked))
                .path("rows")
                .valueStream()
                .map(row ->
                        row.path("id").asString() + " " + row.path("withPerson").asLong())
                .toList();
    }
}
