package org.bandtrail.local.season;

import java.util.HashMap;
import java.util.Map;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;

/** Which identity site-installs gave to a tree, looked up by its site and tag once the inventories are stored. */
final class TreeIndex {
    private final Map<String, String> treeIds = new HashMap<>();
    private final FrontDoor siteInstalls;
    private final String person;

    TreeIndex(FrontDoor siteInstalls, String person) {
        this.siteInstalls = siteInstalls;
        this.person = person;
    }

    /** Reads all trees of a site, page by page. */
    void read(String siteId) {
        String after = "";
        do {
            JsonNode page = siteInstalls.get(
                    "/trees?site=" + siteId + "&limit=200" + (after.isEmpty() ? "" : "&after=" + after),
                    person,
                    siteId);
            for (JsonNode tree : page.path("rows")) {
                treeIds.put(
                        siteId + " " + tree.path("tag").asString(""),
                        tree.path("treeId").asString(""));
            }
            after = page.path("next").asString("");
        } while (!after.isEmpty());
    }

    /**
     * The tree a row of the season means.
     *
     * @throws SeasonStopped if no inventory has it
     */
    String treeOf(Row row) {
        String name = row.text("siteId") + " " + row.text("tag");
        String treeId = treeIds.get(name);
        if (treeId == null) {
            throw new SeasonStopped("%s: tree [%s] is in no inventory. Look at the folder trees of the demo data."
                    .formatted(row.place(), name));
        }
        return treeId;
    }

    int size() {
        return treeIds.size();
    }
}
