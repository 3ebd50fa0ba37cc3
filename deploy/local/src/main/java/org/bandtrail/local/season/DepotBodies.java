package org.bandtrail.local.season;

import java.time.Instant;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the depots send: items, depots, crews, receipts, handouts and returns, each made from one row. */
final class DepotBodies {
    /** When the place was set up in the books, before anything was bought. */
    static final Instant SET_UP = Instant.parse("2026-04-15T12:00:00Z");

    private DepotBodies() {}

    static ObjectNode item(Row row) {
        ObjectNode body = Body.command("item", row.text("materialCode"), SET_UP);
        body.put("kind", row.text("kind").toUpperCase(Locale.ROOT));
        Body.copy(row, body, "materialCode", "name", "width", "opening", "reelLength");
        Body.copyNumbers(row, body, "packSize");
        Body.money(row, body, "unitCost", "unitCostMinor");
        return body;
    }

    static ObjectNode supply(Row row) {
        ObjectNode body = Body.command("supply", row.text("materialCode"), SET_UP);
        Body.copyNumbers(row, body, "leadTimeDays", "leadTimeSdDays", "serviceLevelPermille");
        return body.put("reason", "agreed with the suppliers before the season");
    }

    static ObjectNode depot(Row row) {
        ObjectNode body = Body.command("depot", row.text("depotId"), SET_UP);
        Body.copy(row, body, "depotId", "name");
        return body;
    }

    static ObjectNode crew(Row row) {
        ObjectNode body = Body.command("crew", row.text("crewId"), SET_UP);
        Body.copy(row, body, "crewId", "name", "depotId");
        Body.list(body, "people", row.words("people"));
        return body;
    }

    static ObjectNode reel(Row row) {
        ObjectNode body = Body.of(row, "reel", row.text("reelId"));
        Body.copy(row, body, "reelId", "materialCode", "depotId", "length");
        Body.money(row, body, "cost", "costMinor");
        return body;
    }

    static ObjectNode batch(Row row) {
        ObjectNode body = Body.of(row, "batch", row.text("batchId"));
        Body.copy(row, body, "batchId", "materialCode", "depotId");
        Body.copyNumbers(row, body, "pieces");
        Body.money(row, body, "cost", "costMinor");
        return body;
    }

    static ObjectNode handout(Row row) {
        ObjectNode body = Body.of(row, "handout", row.text("kitId"));
        Body.copy(row, body, "kitId", "depotId", "crewId", "personId");
        Body.list(body, "reels", row.words("reels"));
        counted(row, body, "pieces");
        return body;
    }

    static ObjectNode returned(Row row) {
        ObjectNode body = Body.of(row, "return", row.text("kitId"));
        Body.copy(row, body, "kitId", "personId", "depotId");
        ArrayNode reels = body.putArray("reels");
        for (String measured : row.words("reels")) {
            int equals = measured.indexOf('=');
            reels.addObject()
                    .put("reelId", measured.substring(0, equals))
                    .put("measured", measured.substring(equals + 1) + " mm");
        }
        counted(row, body, "counted");
        return body;
    }

    private static void counted(Row row, ObjectNode body, String field) {
        ArrayNode batches = body.putArray("batches");
        for (String counted : row.words("batches")) {
            int equals = counted.indexOf('=');
            batches.addObject()
                    .put("batchId", counted.substring(0, equals))
                    .put(field, Long.parseLong(counted.substring(equals + 1)));
        }
    }
}
