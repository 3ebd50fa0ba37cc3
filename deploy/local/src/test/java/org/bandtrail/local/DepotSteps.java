package org.bandtrail.local;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What the depot does on the journey, page by page. */
final class DepotSteps {
    private DepotSteps() {}

    static void receives(Visitor depot) {
        for (String[] reel : List.of(new String[] {"R-1", "TAPE-127", "50"}, new String[] {"M-1", "MESH-305", "30"})) {
            depot.opens("/reels/new");
            depot.writes("#reelId", reel[0]);
            depot.chooses("#materialCode", reel[1]);
            depot.writes("#length", reel[2]);
            depot.writes("#cost", "40.00");
            depot.presses("Receive the reel");
            depot.sees("Reel " + reel[0] + " is received with " + reel[2] + " m.");
        }
        depot.opens("/batches/new");
        depot.writes("#batchId", "F-1");
        depot.chooses("#materialCode", "PIN");
        depot.writes("#pieces", "200");
        depot.writes("#cost", "9.00");
        depot.presses("Receive the batch");
        depot.sees("Batch F-1 is received with 200 pieces.");
    }

    static void bringsInTrees(Visitor depot, Path folder) throws IOException {
        Path list = folder.resolve("mill-pond.csv");
        Files.writeString(list, "Tag,Kind,Diameter\n101,AILAL,40.1\n102,AILAL,not measured\n103,ACRU,33\n");
        depot.opens("/import");
        depot.picks("#file", list);
        depot.presses("Go on to the columns");
        depot.chooses("#siteId", "S-MILL");
        depot.chooses("#tagColumn", "Tag");
        depot.chooses("#speciesColumn", "Kind");
        depot.chooses("#dbhColumn", "Diameter");
        depot.chooses("#unit", "cm");
        depot.presses("Look at the trees");
        depot.sees("2 of 3 trees are ready");
        depot.sees("not measured");
        depot.presses("Store 2 trees");
        depot.sees("2 trees are stored.");
        // Girth is the diameter times pi: 401 mm x 3.14159... = 1,259.8 mm.
        depot.seesSoon("/trees?site=S-MILL", "1,260 mm");
    }

    static void handsOut(Visitor depot) {
        depot.seesSoon("/handouts/new?depot=D-1", "M-1");
        depot.chooses("#personId", "P-01");
        depot.chooses("#crewId", "C-1");
        depot.ticks("reelId", "R-1");
        depot.ticks("reelId", "M-1");
        depot.writes("#fastener-0", "60");
        depot.presses("Hand out the kit");
        depot.sees("is handed out to Avel Tarnwick.");
        depot.seesSoon("/handouts", "One kit is still out.");
    }

    static void disposes(Visitor depot) {
        // 1,350 mm replaced and 1,360 mm taken down.
        depot.seesSoon("/waste", "2.71 m");
        depot.ticks("bagIds", "BAG-1");
        depot.writes("#carrier", "CARRIER-2");
        depot.presses("Send to disposal");
        depot.sees("took one bag to disposal.");
        depot.seesSoon("/where?at=disposed", "2.71 m");
    }

    static void takesBack(Visitor depot) {
        // 50 m less 1.35 m and 1.36 m of tape; all the mesh, because the guard was sound; 60 pins less 10.
        depot.seesSoon("/returns/new?person=P-01&depot=D-1", "M-1");
        depot.writes("#measured-0", "30");
        depot.writes("#measured-1", "47.29");
        depot.writes("#counted-0", "50");
        depot.presses("Take back");
        depot.sees("Taken back from Avel Tarnwick");
        depot.sees("R-1 47.29 m 47.29 m none");
        depot.seesSoon("/handouts", "No kit is out.");
    }
}
