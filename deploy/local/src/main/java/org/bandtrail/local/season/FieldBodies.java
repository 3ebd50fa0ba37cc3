package org.bandtrail.local.season;

import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** What the crews send: bands, visits with their replacements and bycatch, teardowns, and the loads of waste. */
final class FieldBodies {
    private FieldBodies() {}

    /** A band fitted to the tree with this identity. */
    static ObjectNode band(Row row, String treeId) {
        ObjectNode body = Body.of(row, "band", row.text("bandId")).put("treeId", treeId);
        Body.copy(row, body, "bandId", "siteId", "crewId", "personId", "girth", "height", "deviation");
        piece(body, "tape", row, "tapeReel", "tapeLength");
        piece(body, "mesh", row, "meshReel", "meshLength");
        fasteners(body, row);
        return body;
    }

    /** A visit, with what was replaced and which animal was found, if anything. */
    static ObjectNode visit(Row row, @Nullable Row replacement, @Nullable Row animal) {
        ObjectNode body = Body.of(row, "visit", row.text("visitId"));
        Body.copy(row, body, "visitId", "bandId", "crewId", "personId", "answer", "guard");
        if (row.text("answer").equals("read")) {
            Body.copyNumbers(row, body, "saturation");
            body.set("saturationPercent", body.remove("saturation"));
            ObjectNode catches = body.putObject("catches");
            for (Phenology stage : Phenology.values()) {
                Body.copyNumbers(row, catches, stage.stage());
            }
            bycatch(body, animal);
        }
        if (replacement != null) {
            ObjectNode replace = body.putObject("replace");
            piece(replace, "tape", replacement, "tapeReel", "tapeLength");
            piece(replace, "mesh", replacement, "meshReel", "meshLength");
            if (replacement.has("meshReel")) {
                ((ObjectNode) replace.get("mesh")).put("oldMesh", replacement.text("oldMesh"));
            }
            fasteners(replace, replacement);
            Body.copy(replacement, replace, "bagId");
        }
        return body;
    }

    private static void bycatch(ObjectNode body, @Nullable Row animal) {
        ObjectNode bycatch = body.putObject("bycatch").put("seen", animal != null);
        if (animal != null) {
            bycatch.put("alive", animal.text("alive").equals("yes"));
            bycatch.put("supervisorTold", animal.text("supervisorTold").equals("yes"));
            Body.copy(animal, bycatch, "animal", "action", "handedTo");
        }
    }

    static ObjectNode teardown(Row row) {
        ObjectNode body = Body.of(row, "teardown", row.text("teardownId"));
        Body.copy(row, body, "teardownId", "bandId", "crewId", "personId", "bagId", "mesh", "fasteners");
        return body;
    }

    /** What became of an animal found on a visit. */
    static ObjectNode outcome(Row row) {
        ObjectNode body = Body.of(row, "outcome", row.text("visitId"));
        Body.copy(row, body, "bandId", "outcome", "handedTo", "handedAt");
        return body;
    }

    static ObjectNode load(Row row) {
        ObjectNode body = Body.of(row, "load", row.text("loadId"));
        Body.copy(row, body, "loadId", "carrier");
        Body.list(body, "bagIds", row.words("bagIds"));
        return body;
    }

    private static void piece(ObjectNode body, String field, Row row, String reelColumn, String lengthColumn) {
        if (row.has(reelColumn)) {
            body.putObject(field).put("reelId", row.text(reelColumn)).put("length", row.text(lengthColumn));
        }
    }

    private static void fasteners(ObjectNode body, Row row) {
        if (row.has("batch")) {
            body.putObject("fasteners").put("batchId", row.text("batch")).put("pieces", row.number("pieces"));
        }
    }
}
