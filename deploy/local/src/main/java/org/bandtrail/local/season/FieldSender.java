package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Sends what the crews did: bands and visits as a telephone syncs them, a crew's day at a time; teardowns; loads. */
final class FieldSender {
    private final Doors doors;
    private final TreeIndex trees;
    private final Map<String, Row> replacements;
    private final Map<String, Row> bycatch;
    private final Map<String, Row> slips;

    /** Reads the files that belong to visits and fits. */
    FieldSender(Path season, Doors doors, TreeIndex trees) throws IOException {
        this.doors = doors;
        this.trees = trees;
        this.replacements = byKey(season.resolve("replacements.csv"), "visitId");
        this.bycatch = byKey(season.resolve("bycatch.csv"), "visitId");
        this.slips = byKey(season.resolve("slips.csv"), "bandId");
    }

    private static Map<String, Row> byKey(Path file, String column) throws IOException {
        Map<String, Row> rows = new HashMap<>();
        CsvRows.read(file).forEach(row -> rows.put(row.text(column), row));
        return rows;
    }

    void fits(List<Row> rows) {
        ObjectNode sync = Body.empty();
        ArrayNode records = sync.putArray("records");
        for (Row row : rows) {
            ObjectNode band = FieldBodies.band(row, trees.treeOf(row));
            Row slip = slips.get(row.text("bandId"));
            if (slip != null) {
                askAbout(slip, band.deepCopy(), row);
            }
            records.add(band);
        }
        accepted(doors.siteInstalls().post("/bands/sync", sync, person(rows), place(rows)), rows);
    }

    /** Has a wrongly typed length checked, as the crew's page does before it stores, and expects to be asked. */
    private void askAbout(Row slip, ObjectNode band, Row row) {
        String typed = slip.text("typed");
        if (slip.text("field").equals("tapeLength")) {
            ((ObjectNode) band.get("tape")).put("length", typed);
        } else {
            band.put(slip.text("field"), typed);
        }
        JsonNode answer = doors.siteInstalls().post("/bands/check", band, row.text("personId"), slip.place());
        if (answer.path("questions").isEmpty()) {
            throw new SeasonStopped(
                    "%s: [%s] typed for [%s] was not asked about.".formatted(slip.place(), typed, slip.text("meant")));
        }
    }

    void visits(List<Row> rows) {
        ObjectNode sync = Body.empty();
        ArrayNode records = sync.putArray("records");
        for (Row row : rows) {
            String visitId = row.text("visitId");
            records.add(FieldBodies.visit(row, replacements.get(visitId), bycatch.get(visitId)));
        }
        accepted(doors.inspections().post("/visits/sync", sync, person(rows), place(rows)), rows);
    }

    void teardowns(List<Row> rows) {
        for (Row row : rows) {
            doors.inspections().post("/teardowns", FieldBodies.teardown(row), row.text("personId"), row.place());
        }
    }

    /** Says what became of animals. */
    void outcomes(List<Row> rows) {
        for (Row row : rows) {
            String path = "/bycatch/" + row.text("visitId") + "/outcome";
            doors.inspections().post(path, FieldBodies.outcome(row), row.text("by"), row.place());
        }
    }

    void loads(List<Row> rows) {
        for (Row row : rows) {
            doors.inspections().post("/loads", FieldBodies.load(row), row.text("by"), row.place());
        }
    }

    /** A sync answers each record on its own; one that was not taken stops the loading. */
    private static void accepted(JsonNode answer, List<Row> rows) {
        JsonNode results = answer.path("results");
        for (int i = 0; i < results.size(); i++) {
            String problem = results.get(i).path("problem").asString("");
            if (!problem.isEmpty()) {
                throw new SeasonStopped(
                        "%s was not taken. %s".formatted(rows.get(i).place(), problem));
            }
        }
    }

    private static String person(List<Row> rows) {
        return rows.getFirst().text("personId");
    }

    private static String place(List<Row> rows) {
        return "%s rows %d to %d"
                .formatted(
                        rows.getFirst().file(),
                        rows.getFirst().line(),
                        rows.getLast().line());
    }
}
