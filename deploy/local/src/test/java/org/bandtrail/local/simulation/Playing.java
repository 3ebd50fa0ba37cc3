package org.bandtrail.local.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.bandtrail.local.Calls;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Plays one history through the front doors. Everything in it is named with a prefix of its own, so that histories do
 * not meet; a bag that left with a load gets a new name, as a new bag would.
 */
final class Playing {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Instant BEGIN = Instant.parse("2026-05-04T08:00:00Z");
    private final Calls supplyStock;
    private final Calls siteInstalls;
    private final Calls inspections;
    private final String prefix;
    private final Auditor auditor = new Auditor();
    private final int[] bagGeneration = new int[2];
    private int minute;

    Playing(Calls supplyStock, Calls siteInstalls, Calls inspections, String prefix) {
        this.supplyStock = supplyStock;
        this.siteInstalls = siteInstalls;
        this.inspections = inspections;
        this.prefix = prefix;
    }

    Map<String, Map<String, Long>> expected() {
        return auditor.expected();
    }

    void play(Step step) {
        minute++;
        switch (step) {
            case Step.Receive receive when auditor.canReceive(receive) -> receive(receive);
            case Step.HandOut handOut when auditor.canHandOut(handOut) -> handOut(handOut);
            case Step.Fit fit when auditor.canFit(fit) -> fit(fit);
            case Step.ReplaceTape replace when auditor.isUp(replace.band()) -> replace(replace);
            case Step.TakeDown down when auditor.isUp(down.band()) -> takeDown(down);
            case Step.Dispose dispose when auditor.hasContents(dispose.bag()) -> dispose(dispose);
            case Step.Return back -> takeBack(back);
            default -> minute--;
        }
    }

    private void receive(Step.Receive step) {
        auditor.received(step);
        post(supplyStock, "/reels", """
                "reelId":"%s","materialCode":"%s","depotId":"SIM","length":"%d mm",
                "cost":{"minor":%d,"currency":"USD"}""".formatted(
                name(Auditor.reel(step.reel())), step.reel() < 2 ? "SIM-TAPE" : "SIM-MESH", step.mm(), step.mm() / 7));
    }

    private void handOut(Step.HandOut step) {
        auditor.handedOut(step);
        post(supplyStock, "/handouts", """
                "kitId":"%s","depotId":"SIM","crewId":"SIM","personId":"%s","reels":["%s"]""".formatted(
                        name("K" + minute), person(step.person()), name(Auditor.reel(step.reel()))));
    }

    private void fit(Step.Fit step) {
        auditor.fitted(step);
        post(siteInstalls, "/bands", """
                "bandId":"%s","treeId":"%s","siteId":"SIM","crewId":"SIM","personId":"%s","girth":"1000 mm",
                "tape":{"reelId":"%s","length":"%d mm"},"mesh":{"reelId":"%s","length":"%d mm"}""".formatted(
                        name("B" + step.band()),
                        name("T" + step.tree()),
                        person(step.person()),
                        name(Auditor.reel(step.tapeReel())),
                        step.tapeMm(),
                        name(Auditor.reel(step.meshReel())),
                        step.meshMm()));
    }

    private void replace(Step.ReplaceTape step) {
        auditor.replaced(step);
        post(inspections, "/visits", """
                "visitId":"%s","bandId":"%s","personId":"%s","answer":"read","saturationPercent":95,"catches":{"adult":3},
                "guard":"sound","replace":{"tape":{"reelId":"%s","length":"%d mm"},"bagId":"%s"}""".formatted(
                        name("V" + minute),
                        name("B" + step.band()),
                        person(step.person()),
                        name(Auditor.reel(step.reel())),
                        step.mm(),
                        bag(step.bag())));
    }

    private void takeDown(Step.TakeDown step) {
        auditor.takenDown(step);
        post(inspections, "/teardowns", """
                "teardownId":"%s","bandId":"%s","personId":"%s","bagId":"%s","mesh":"%s\"""".formatted(
                        name("D" + minute),
                        name("B" + step.band()),
                        person(step.person()),
                        bag(step.bag()),
                        step.meshAgain() ? "reuse" : "bag"));
    }

    private void dispose(Step.Dispose step) {
        int load = auditor.disposed(step);
        post(inspections, "/loads", """
                "loadId":"%s","bagIds":["%s"],"carrier":"SIM\"""".formatted(name("L" + load), bag(step.bag())));
        bagGeneration[step.bag()]++;
    }

    private void takeBack(Step.Return step) {
        auditor.returned(step);
        post(supplyStock, "/returns", """
                "personId":"%s","depotId":"SIM","reels":[{"reelId":"%s","measured":"%d mm"}]""".formatted(person(step.person()), name(Auditor.reel(step.reel())), step.mm()));
    }

    private void post(Calls service, String path, String fields) {
        String body = "{\"commandId\":\"%s\",\"happenedAt\":\"%s\",%s}"
                .formatted(UUID.randomUUID(), BEGIN.plusSeconds(60L * minute), fields);
        Calls.Answer answer = service.post(path, body);
        assertThat(answer.status())
                .as(path + " " + body + " -> " + answer.body())
                .isEqualTo(200);
    }

    /** Where the books have everything of this history: reel, place as the auditor writes it, millimetres. */
    Map<String, Map<String, Long>> books(List<String> reels) {
        Map<String, Map<String, Long>> books = new TreeMap<>();
        for (String reel : reels) {
            Calls.Answer answer = supplyStock.get("/reels/" + name(reel));
            if (answer.status() == 404) {
                continue;
            }
            Map<String, Long> places = new TreeMap<>();
            for (JsonNode balance : JSON.readTree(answer.body()).path("places")) {
                places.merge(
                        plain(balance.path("place").asString()),
                        balance.path("quantity").asLong(),
                        Long::sum);
            }
            places.values().removeIf(mm -> mm == 0);
            if (!places.isEmpty()) {
                books.put(reel, places);
            }
        }
        return books;
    }

    private String plain(String place) {
        String kind = place.substring(0, place.indexOf(':'));
        String id = place.substring(place.indexOf(':') + 1).replace(prefix, "");
        return switch (kind) {
            case "crew", "missing" -> "with:" + id.substring(1);
            case "tree" -> "tree:" + id.substring(1);
            case "bag" -> "bag:" + id.substring(3, 4);
            default -> kind;
        };
    }

    private String name(String plain) {
        return prefix + plain;
    }

    private String person(int number) {
        return name("P" + number);
    }

    private String bag(int number) {
        return name("BAG" + number + "-" + bagGeneration[number]);
    }
}
