package org.bandtrail.local.season;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the depot does for the forest plot: items, reels bought as planned, one kit out and back, the comparison. */
final class ForestSupplies {
    static final String BATCH = "FP-F-1";
    private static final String KIT = "FP-K-1";
    private static final long SPARE_PIECES = 100;
    private static final Instant BACK = ForestInventoryRun.DAY_1.plus(Duration.ofDays(8));

    private final FrontDoor supplyStock;

    ForestSupplies(FrontDoor supplyStock) {
        this.supplyStock = supplyStock;
    }

    void register() {
        post("/items", item("FP-TAPE", "TAPE", 4295).put("width", "127 mm").put("reelLength", "45 yd"));
        post(
                "/items",
                item("FP-MESH", "MESH", 6780)
                        .put("width", "305 mm")
                        .put("opening", "12 mm")
                        .put("reelLength", "100 ft"));
        post("/items", item("FP-PIN", "FASTENER", 1275).put("packSize", 500));
        post(
                "/depots",
                ForestInventoryRun.command("depot", ForestInventoryRun.DEPOT)
                        .put("depotId", ForestInventoryRun.DEPOT)
                        .put("name", "Forest plot shed"));
        ObjectNode crew = ForestInventoryRun.command("crew", ForestInventoryRun.CREW)
                .put("crewId", ForestInventoryRun.CREW)
                .put("name", "Forest plot crew")
                .put("depotId", ForestInventoryRun.DEPOT);
        Body.list(crew, "people", List.of(ForestInventoryRun.PERSON));
        post("/crews", crew);
    }

    private static ObjectNode item(String code, String kind, int costMinor) {
        ObjectNode body = ForestInventoryRun.command("item", code)
                .put("materialCode", code)
                .put("kind", kind)
                .put("name", code);
        body.putObject("unitCost").put("minor", costMinor).put("currency", "USD");
        return body;
    }

    /** Buys what the plan needs and hands it to one person. */
    void handOut(ForestPlan plan) {
        List<String> reels = new ArrayList<>();
        for (ReelCutting cutting : List.of(plan.tape(), plan.mesh())) {
            for (int i = 0; i < cutting.reels(); i++) {
                ObjectNode reel = bought("reel", cutting.reelId(i), cutting.materialCode, 4295 + i)
                        .put("reelId", cutting.reelId(i))
                        .put("length", cutting.reelMm + " mm");
                post("/reels", reel);
                reels.add(cutting.reelId(i));
            }
        }
        long pieces = plan.pieces() + SPARE_PIECES;
        post(
                "/batches",
                bought("batch", BATCH, "FP-PIN", 7_351).put("batchId", BATCH).put("pieces", pieces));
        ObjectNode kit = now("handout", KIT)
                .put("kitId", KIT)
                .put("depotId", ForestInventoryRun.DEPOT)
                .put("crewId", ForestInventoryRun.CREW)
                .put("personId", ForestInventoryRun.PERSON);
        Body.list(kit, "reels", reels);
        kit.putArray("batches").addObject().put("batchId", BATCH).put("pieces", pieces);
        post("/handouts", kit);
    }

    /** Takes back what the plan leaves, measured to the millimetre. */
    void takeBack(ForestPlan plan) {
        ObjectNode body = ForestInventoryRun.fact("return", KIT, BACK)
                .put("kitId", KIT)
                .put("personId", ForestInventoryRun.PERSON)
                .put("depotId", ForestInventoryRun.DEPOT);
        ArrayNode reels = body.putArray("reels");
        for (ReelCutting cutting : List.of(plan.tape(), plan.mesh())) {
            for (int i = 0; i < cutting.reels(); i++) {
                reels.addObject().put("reelId", cutting.reelId(i)).put("measured", backMm(plan, cutting, i) + " mm");
            }
        }
        body.putArray("batches").addObject().put("batchId", BATCH).put("counted", SPARE_PIECES);
        for (JsonNode line : post("/returns", body).path("lines")) {
            if (line.path("difference").asLong() != 0) {
                throw new SeasonStopped("The return does not add up: " + line);
            }
        }
    }

    private static long backMm(ForestPlan plan, ReelCutting cutting, int index) {
        return cutting.leftMm(index) + plan.keptMeshMm(cutting.reelId(index));
    }

    /** Compares the books' balance of every reel with the plan, once the reels have been read into the balances. */
    void compare(ForestPlan plan) {
        for (ReelCutting cutting : List.of(plan.tape(), plan.mesh())) {
            for (int i = 0; i < cutting.reels(); i++) {
                new ForestBalance(supplyStock, cutting.reelId(i))
                        .mustBe(cutting.reelMm, backMm(plan, cutting, i), onTreesMm(plan, cutting.reelId(i)));
            }
        }
    }

    private static long onTreesMm(ForestPlan plan, String reelId) {
        long sum = 0;
        for (ForestBand band : plan.bands()) {
            String tapeNow = band.isRenewed() ? band.renewedFrom() : band.tapeReel();
            sum += band.staysUp() && tapeNow.equals(reelId) ? band.tapeMm() : 0;
            sum += band.staysUp() && band.meshReel().equals(reelId) ? band.meshMm() : 0;
        }
        return sum;
    }

    private static ObjectNode bought(String kind, String key, String materialCode, int costMinor) {
        ObjectNode body = now(kind, key).put("materialCode", materialCode).put("depotId", ForestInventoryRun.DEPOT);
        body.putObject("cost").put("minor", costMinor).put("currency", "USD");
        return body;
    }

    private static ObjectNode now(String kind, String key) {
        return ForestInventoryRun.fact(kind, key, ForestInventoryRun.DAY_1);
    }

    private JsonNode post(String path, ObjectNode body) {
        return supplyStock.post(path, body, ForestInventoryRun.KEEPER, "forest plot " + path);
    }
}
