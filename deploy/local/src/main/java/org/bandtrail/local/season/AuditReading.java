package org.bandtrail.local.season;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.Hearing;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;

/** Reads the audit over HTTP and puts it in a sentence; the laws must read zero, findings may stand open. */
final class AuditReading {
    private final FrontDoor supplyStock;
    private final String person;
    private final Duration patience;

    /** A reading by this person that waits this long for what is still being projected. */
    AuditReading(FrontDoor supplyStock, String person, Duration patience) {
        this.supplyStock = supplyStock;
        this.person = person;
        this.patience = patience;
    }

    /**
     * The audit in a sentence, once it reads zero.
     *
     * @throws SeasonStopped naming every law that does not hold when patience ends
     */
    String sentence() {
        long giveUp = System.nanoTime() + patience.toNanos();
        JsonNode audit = read();
        while (!broken(audit).isEmpty() && System.nanoTime() < giveUp) {
            Hearing.pause();
            audit = read();
        }
        if (!broken(audit).isEmpty()) {
            throw new SeasonStopped("The audit does not read zero: " + String.join("; ", broken(audit)));
        }
        return ("The audit reads zero: %d laws hold to the millimetre, the piece and the cent. "
                        + "%d findings stand open, each with a name and a date.")
                .formatted(audit.path("laws").size(), audit.path("findings").size());
    }

    private JsonNode read() {
        return supplyStock.get("/audit", person, "the audit");
    }

    private static List<String> broken(JsonNode audit) {
        List<String> broken = new ArrayList<>();
        if (audit.path("laws").isEmpty()) {
            broken.add("it states no law");
        }
        for (JsonNode law : audit.path("laws")) {
            if (law.path("difference").asLong() != 0) {
                broken.add("%s, %s: %s is not %s"
                        .formatted(
                                law.path("name").asString(""),
                                law.path("statement").asString(""),
                                law.path("left"),
                                law.path("right")));
            }
        }
        return broken;
    }
}
