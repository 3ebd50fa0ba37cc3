package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.local.doors.FrontDoor;
import tools.jackson.databind.JsonNode;

/**
 * Which band gets which pieces from which reel.
 *
 * @param bands one per tree
 * @param tape where tape is cut, first strips and renewed ones
 * @param mesh where mesh is cut
 */
record ForestPlan(List<ForestBand> bands, ReelCutting tape, ReelCutting mesh) {
    private static final long TAPE_REEL_MM = 41_148;
    private static final long MESH_REEL_MM = 30_480;

    /** Cuts as site-installs proposes for each girth. */
    static ForestPlan of(List<JsonNode> trees, FrontDoor siteInstalls) {
        ReelCutting tape = new ReelCutting("FP-TAPE", "FP-R-T", TAPE_REEL_MM);
        ReelCutting mesh = new ReelCutting("FP-MESH", "FP-R-M", MESH_REEL_MM);
        List<ForestBand> bands = new ArrayList<>();
        for (JsonNode tree : trees) {
            long girth = tree.path("girthMm").asLong();
            JsonNode cut =
                    siteInstalls.get("/proposals?girth=" + girth + "%20mm", ForestInventoryRun.PERSON, "a proposal");
            long tapeMm = cut.path("tapeMm").asLong();
            long meshMm = cut.path("meshMm").asLong();
            int number = bands.size() + 1;
            bands.add(new ForestBand(
                    number,
                    tree.path("treeId").asString(""),
                    girth,
                    tape.cut(tapeMm),
                    tapeMm,
                    mesh.cut(meshMm),
                    meshMm,
                    cut.path("fasteners").asLong(),
                    number % 3 == 0 ? tape.cut(tapeMm) : ""));
        }
        return new ForestPlan(List.copyOf(bands), tape, mesh);
    }

    /** All fasteners the bands take. */
    long pieces() {
        return bands.stream().mapToLong(ForestBand::pieces).sum();
    }

    /** Mesh of one reel that came down to be used again. */
    long keptMeshMm(String reelId) {
        return bands.stream()
                .filter(band -> band.meshReel().equals(reelId) && band.meshIsKept() && !band.staysUp())
                .mapToLong(ForestBand::meshMm)
                .sum();
    }
}
