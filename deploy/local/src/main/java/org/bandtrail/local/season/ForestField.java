package org.bandtrail.local.season;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.Hearing;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the crew does on the forest plot: fit, look twice, renew full strips, take down, dispose. */
final class ForestField {
    private static final int RECORDS_AT_ONCE = 100;
    private static final String BATCH = ForestSupplies.BATCH;
    private static final String BAG = "FP-BAG";

    private final Doors doors;
    private final Hearing hearing;

    ForestField(Doors doors, Hearing hearing) {
        this.doors = doors;
        this.hearing = hearing;
    }

    void fit(List<ForestBand> bands) {
        sync(
                doors.siteInstalls(),
                "/bands/sync",
                bands.stream()
                        .map(band -> band.fitted(ForestInventoryRun.CREW, ForestInventoryRun.PERSON, BATCH))
                        .toList());
        hearing.await(doors.inspections(), doors.siteInstalls());
    }

    void look(List<ForestBand> bands) {
        sync(
                doors.inspections(),
                "/visits/sync",
                bands.stream().map(band -> visit(band, 1)).toList());
        sync(
                doors.inspections(),
                "/visits/sync",
                bands.stream().map(band -> visit(band, 2)).toList());
    }

    private static ObjectNode visit(ForestBand band, int round) {
        String visitId = "FP-V-" + band.number() + "-" + round;
        boolean full = round == 2 && band.isRenewed();
        ObjectNode body = ForestInventoryRun.fact("visit", visitId, day(2 * round))
                .put("visitId", visitId)
                .put("bandId", band.bandId())
                .put("crewId", ForestInventoryRun.CREW)
                .put("personId", ForestInventoryRun.PERSON)
                .put("answer", "read")
                .put("saturationPercent", full ? 90 : 10 * round)
                .put("guard", "sound");
        body.putObject("catches").put("adult", full ? 40 : band.number() % 5);
        body.putObject("bycatch").put("seen", false);
        if (full) {
            ObjectNode replace = body.putObject("replace").put("bagId", BAG);
            replace.putObject("tape").put("reelId", band.renewedFrom()).put("length", band.tapeMm() + " mm");
        }
        return body;
    }

    void takeDown(List<ForestBand> bands) {
        for (ForestBand band : bands) {
            if (!band.staysUp()) {
                String id = "FP-T-" + band.number();
                ObjectNode body = ForestInventoryRun.fact("teardown", id, day(6))
                        .put("teardownId", id)
                        .put("bandId", band.bandId())
                        .put("personId", ForestInventoryRun.PERSON)
                        .put("bagId", BAG)
                        .put("mesh", band.meshIsKept() ? "reuse" : "bag")
                        .put("fasteners", "bag");
                doors.inspections().post("/teardowns", body, ForestInventoryRun.PERSON, id);
            }
        }
        ObjectNode load = ForestInventoryRun.fact("load", "FP-LOAD", day(7))
                .put("loadId", "FP-LOAD")
                .put("carrier", "TRUCK-1");
        Body.list(load, "bagIds", List.of(BAG));
        doors.inspections().post("/loads", load, ForestInventoryRun.KEEPER, "the load");
    }

    private static Instant day(int number) {
        return ForestInventoryRun.DAY_1.plus(Duration.ofDays(number));
    }

    private static void sync(FrontDoor door, String path, List<ObjectNode> bodies) {
        for (int first = 0; first < bodies.size(); first += RECORDS_AT_ONCE) {
            ObjectNode sync = Body.empty();
            ArrayNode records = sync.putArray("records");
            bodies.subList(first, Math.min(bodies.size(), first + RECORDS_AT_ONCE))
                    .forEach(records::add);
            door.post(path, sync, ForestInventoryRun.PERSON, "record " + (first + 1) + " and following");
        }
    }
}
