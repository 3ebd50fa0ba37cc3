package org.bandtrail.local.season;

import java.time.Instant;
import java.util.List;
import org.bandtrail.local.doors.CommandIds;
import org.bandtrail.local.doors.FormData;
import org.bandtrail.local.doors.FrontDoor;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Sends what crews saw when they went from tree to tree: where it stands, what the host key asked, a picture. A cell
 * that is empty was not looked at.
 */
final class TreeLookSender {
    private static final String PEST = "LYCMDE";
    private static final List<String> QUESTIONS = List.of("leaf", "twig", "edge", "fruit", "smell");

    private final FrontDoor siteInstalls;
    private final TreeIndex trees;

    TreeLookSender(FrontDoor siteInstalls, TreeIndex trees) {
        this.siteInstalls = siteInstalls;
        this.trees = trees;
    }

    void looks(List<Row> rows) {
        for (Row row : rows) {
            String tree = trees.treeOf(row);
            String person = row.text("personId");
            if (row.has("lat")) {
                siteInstalls.post("/trees/" + tree + "/corrections", place(row, tree), person, row.place());
            }
            if (row.has("leaf")) {
                siteInstalls.post("/host-checks", check(row, tree), person, row.place());
            }
            if (row.has("photo")) {
                siteInstalls.upload("/photos", photo(row, tree), person, row.place());
            }
        }
    }

    /** The whole of what the register says, because what is left out of a correction counts as unknown. */
    private static ObjectNode place(Row row, String tree) {
        ObjectNode body = Body.command("stands", tree, moment(row));
        Body.copy(row, body, "siteId", "tag", "species", "lat", "lon");
        return body.put("speciesCode", row.text("species")).put("reason", "position taken with a hand receiver");
    }

    private static ObjectNode check(Row row, String tree) {
        ObjectNode body = Body.of(row, "host-check", tree).put("treeId", tree).put("pest", PEST);
        ArrayNode answers = body.putArray("answers");
        for (String question : QUESTIONS) {
            if (row.has(question)) {
                answers.addObject().put("question", question).put("answer", row.text(question));
            }
        }
        return body;
    }

    private static FormData photo(Row row, String tree) {
        return new FormData()
                .field("commandId", CommandIds.of("photo", tree, moment(row)).toString())
                .field("of", "tree")
                .field("subject", tree)
                .png("file", tree + ".png", TrunkDrawing.png(tree));
    }

    private static Instant moment(Row row) {
        return Instant.parse(row.text("happenedAt"));
    }
}
