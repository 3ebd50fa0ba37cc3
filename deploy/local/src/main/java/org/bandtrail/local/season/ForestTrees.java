package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.local.doors.FormData;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Brings the living trees of the forest inventory in and compares every girth with the file. */
final class ForestTrees {
    private final Path inventory;
    private final FrontDoor siteInstalls;
    private final List<JsonNode> banded = new ArrayList<>();

    ForestTrees(Path inventory, FrontDoor siteInstalls) {
        this.inventory = inventory;
        this.siteInstalls = siteInstalls;
    }

    /**
     * Registers the site, previews and stores the file, reads the trees back.
     *
     * @return girth in millimetres by tag, as the service has it and the file says
     * @throws SeasonStopped if a girth is not pi times the diameter
     */
    Map<String, Long> bringIn() throws IOException {
        ObjectNode site = ForestInventoryRun.fact("site", ForestInventoryRun.SITE, ForestInventoryRun.DAY_1)
                .put("siteId", ForestInventoryRun.SITE)
                .put("name", "Forest plot");
        siteInstalls.postAndSee("/sites", site, ForestInventoryRun.KEEPER, "the site");
        FormData form = new FormData()
                .file("file", String.valueOf(inventory.getFileName()), Files.readAllBytes(inventory))
                .json("mapping", mapping().toString());
        JsonNode preview =
                siteInstalls.upload("/tree-imports/preview", form, ForestInventoryRun.KEEPER, "the inventory");
        if (preview.path("ready").asLong() > 0) {
            ObjectNode store = ForestInventoryRun.command("store", "inventory").put("onlyReady", true);
            String path = "/tree-imports/" + preview.path("importId").asString("") + "/store";
            siteInstalls.postAndSee(path, store, ForestInventoryRun.KEEPER, "the inventory");
        }
        return compare(ForestInventory.livingGirths(inventory));
    }

    private static ObjectNode mapping() {
        return Body.empty()
                .put("siteId", ForestInventoryRun.SITE)
                .put("tagColumn", ForestInventory.TAG)
                .put("speciesColumn", "Species_code")
                .put("dbhColumn", ForestInventory.DIAMETER_CM)
                .put("unit", "cm")
                .put("aliveColumn", ForestInventory.STATUS)
                .put("aliveValue", ForestInventory.LIVING);
    }

    private Map<String, Long> compare(Map<String, Long> inFile) {
        Map<String, Long> inBooks = new TreeMap<>();
        String after = "";
        do {
            String next = after.isEmpty() ? "" : "&after=" + after;
            JsonNode page = siteInstalls.get(
                    "/trees?site=" + ForestInventoryRun.SITE + "&limit=200" + next, ForestInventoryRun.KEEPER, "trees");
            for (JsonNode tree : page.path("rows")) {
                inBooks.put(tree.path("tag").asString(""), tree.path("girthMm").asLong());
                if (tree.path("girthMm").asLong() >= Stand.THINNEST_MM) {
                    banded.add(tree);
                }
            }
            after = page.path("next").asString("");
        } while (!after.isEmpty());
        inFile.forEach((tag, girth) -> {
            if (!girth.equals(inBooks.get(tag))) {
                throw new SeasonStopped("Tree %s: the file's diameter gives a girth of %d mm, site-installs has %s."
                        .formatted(tag, girth, inBooks.get(tag)));
            }
        });
        return inBooks;
    }

    /** The trees thick enough for a band, with {@code treeId} and {@code girthMm}. */
    List<JsonNode> toBeBanded() {
        return List.copyOf(banded);
    }
}
