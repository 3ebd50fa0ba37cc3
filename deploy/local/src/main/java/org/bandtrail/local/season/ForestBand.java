package org.bandtrail.local.season;

import tools.jackson.databind.node.ObjectNode;

/**
 * A band planned for a tree of the forest inventory, cut as site-installs proposes.
 *
 * @param number 1 for the first; chooses what happens to the band later
 * @param treeId the identity site-installs gave the tree
 */
record ForestBand(
        int number,
        String treeId,
        long girthMm,
        String tapeReel,
        long tapeMm,
        String meshReel,
        long meshMm,
        long pieces,
        String renewedFrom) {

    String bandId() {
        return "FP-B-" + number;
    }

    /** Every third strip is full on the second visit and renewed. */
    boolean isRenewed() {
        return number % 3 == 0;
    }

    /** Every twentieth band stays up. */
    boolean staysUp() {
        return number % 20 == 0;
    }

    /** Every second guard that comes down is used again. */
    boolean meshIsKept() {
        return number % 2 == 0;
    }

    /** The request body for fitting it. */
    ObjectNode fitted(String crew, String person, String batch) {
        ObjectNode body = ForestInventoryRun.fact("band", bandId(), ForestInventoryRun.DAY_1)
                .put("bandId", bandId())
                .put("treeId", treeId)
                .put("siteId", ForestInventoryRun.SITE)
                .put("crewId", crew)
                .put("personId", person)
                .put("girth", girthMm + " mm")
                .put("height", "1200 mm");
        body.putObject("tape").put("reelId", tapeReel).put("length", tapeMm + " mm");
        body.putObject("mesh").put("reelId", meshReel).put("length", meshMm + " mm");
        body.putObject("fasteners").put("batchId", batch).put("pieces", pieces);
        return body;
    }
}
