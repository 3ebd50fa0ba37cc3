package org.bandtrail.local.season;

import java.util.List;
import java.util.function.Function;
import org.bandtrail.local.doors.FrontDoor;
import tools.jackson.databind.node.ObjectNode;

/** Sends what the depots did, each row by the keeper who did it. */
record DepotSender(FrontDoor supplyStock) {

    void reels(List<Row> rows) {
        send("/reels", rows, DepotBodies::reel);
    }

    void batches(List<Row> rows) {
        send("/batches", rows, DepotBodies::batch);
    }

    void handouts(List<Row> rows) {
        send("/handouts", rows, DepotBodies::handout);
    }

    void returns(List<Row> rows) {
        send("/returns", rows, DepotBodies::returned);
    }

    private void send(String path, List<Row> rows, Function<Row, ObjectNode> body) {
        for (Row row : rows) {
            supplyStock.post(path, body.apply(row), row.text("by"), row.place());
        }
    }
}
