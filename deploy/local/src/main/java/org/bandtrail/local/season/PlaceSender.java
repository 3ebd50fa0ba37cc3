package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.FormData;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Sends what is there before the season begins: items, depots, crews, sites, and the trees by way of the import. */
final class PlaceSender {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path demoData;
    private final Doors doors;
    private final String lead;

    PlaceSender(Path demoData, Doors doors, String lead) {
        this.demoData = demoData;
        this.doors = doors;
        this.lead = lead;
    }

    /** Sends items with their supply terms, depots, crews and sites. */
    void sendPlace() throws IOException {
        for (Row row : rows("place/items.csv")) {
            doors.supplyStock().post("/items", DepotBodies.item(row), lead, row.place());
            String supply = "/items/" + row.text("materialCode") + "/supply";
            doors.supplyStock().put(supply, DepotBodies.supply(row), lead, row.place());
        }
        for (Row row : rows("place/depots.csv")) {
            doors.supplyStock().post("/depots", DepotBodies.depot(row), lead, row.place());
        }
        for (Row row : rows("place/crews.csv")) {
            doors.supplyStock().post("/crews", DepotBodies.crew(row), lead, row.place());
        }
        for (Row row : rows("place/sites.csv")) {
            ObjectNode body = Body.command("site", row.text("siteId"), DepotBodies.SET_UP);
            Body.copy(row, body, "siteId", "name", "accessNotes");
            doors.siteInstalls().postAndSee("/sites", body, lead, row.place());
        }
    }

    /** Previews and stores every inventory, then sends what was measured again, then learns the trees' identities. */
    TreeIndex sendTrees() throws IOException {
        for (String line : Files.readAllLines(demoData.resolve("trees/imports.jsonl"), StandardCharsets.UTF_8)) {
            sendInventory(JSON.readTree(line));
        }
        TreeIndex trees = new TreeIndex(doors.siteInstalls(), lead);
        for (Row site : rows("place/sites.csv")) {
            trees.read(site.text("siteId"));
        }
        for (Row row : rows("trees/measured-again.csv")) {
            sendMeasured(row, trees);
            trees.read(row.text("siteId"));
        }
        return trees;
    }

    /** A tree the import left out is registered now; one it stored with a doubtful girth gets a second measurement. */
    private void sendMeasured(Row row, TreeIndex trees) {
        ObjectNode body = Body.of(row, "tree", row.text("siteId") + row.text("tag"));
        if (row.text("stored").equals("yes")) {
            Body.copy(row, body, "girth", "dbh");
            doors.siteInstalls().postAndSee("/trees/" + trees.treeOf(row) + "/girths", body, lead, row.place());
        } else {
            Body.copy(row, body, "siteId", "tag", "species", "girth", "dbh");
            doors.siteInstalls().postAndSee("/trees", body, lead, row.place());
        }
    }

    private void sendInventory(JsonNode entry) throws IOException {
        String file = entry.path("file").asString("");
        FormData form = new FormData()
                .file("file", file, Files.readAllBytes(demoData.resolve("trees").resolve(file)))
                .json("mapping", entry.path("mapping").toString());
        JsonNode preview = doors.siteInstalls().upload("/tree-imports/preview", form, lead, file);
        if (preview.path("problems").isEmpty() && preview.path("questions").isEmpty()) {
            throw new SeasonStopped(file + ": the preview doubts nothing, though the file is wrong on purpose.");
        }
        if (preview.path("ready").asLong() > 0) {
            ObjectNode store =
                    Body.command("inventory", file, DepotBodies.SET_UP).put("onlyReady", true);
            String path = "/tree-imports/" + preview.path("importId").asString("") + "/store";
            doors.siteInstalls().postAndSee(path, store, lead, file);
        }
    }

    private List<Row> rows(String file) throws IOException {
        return CsvRows.read(demoData.resolve(file));
    }
}
