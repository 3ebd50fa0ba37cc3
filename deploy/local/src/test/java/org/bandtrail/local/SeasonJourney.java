package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One metre of tape from receipt to disposal, through the pages, in a real browser, with all services running. Every
 * page that is opened on the way is checked for accessibility (axe-core, WCAG 2.2 A and AA, contrast 7:1).
 */
class SeasonJourney {
    private static final String MISSING =
            "SKIPPED: the journey through the browser did not run, because there is no %s here. On Debian: apt-get"
                    + " install chromium.";

    @TempDir
    Path folder;

    @Test
    void a_metre_goes_from_receipt_to_disposal_and_the_audit_reads_zero() throws Exception {
        if (!Chromium.isHere()) {
            System.out.println(MISSING.formatted(Chromium.PROGRAM));
        }
        assumeTrue(Chromium.isHere(), MISSING.formatted(Chromium.PROGRAM));
        LauncherOptions options = LauncherOptions.parse(
                folder, "--empty", "--data", folder.resolve("data").toString(), "--ports", "0,0,0,0");
        try (House house = House.start(options, line -> {});
                JourneyPlace place = new JourneyPlace(house);
                Chromium chromium = new Chromium(house.at(Service.FRONT_DESK))) {
            place.set();
            Visitor depot = chromium.signedIn("brisa", JourneyPlace.password("brisa"));
            depot.opens("/");
            depot.sees("Nothing has been received yet");
            receives(depot);
            bringsInTrees(depot);
            handsOut(depot);
            Visitor crew = chromium.signedIn("avel", JourneyPlace.password("avel"));
            String band = fits(crew);
            looksAndReplaces(crew, band);
            takesDown(crew, band);
            disposes(depot);
            takesBack(depot);
            everythingAddsUp(depot);
            everybodyReads(chromium, band);
            assertThat(chromium.violations()).as("on %s", chromium.checked()).isEmpty();
        }
    }

    private static void receives(Visitor depot) {
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

    private void bringsInTrees(Visitor depot) throws IOException {
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

    private static void handsOut(Visitor depot) {
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

    private static String fits(Visitor crew) {
        crew.seesSoon("/bands/new?q=101", "Tree 101");
        crew.follows("Fit a band on tree 101");
        assertThat(crew.value("#tapeReel"))
                .as("the only reel of tape with this person")
                .isEqualTo("R-1");
        assertThat(crew.value("#fastenerPieces")).as("proposed").isNotEmpty();
        crew.writes("#tapeLength", "13");
        crew.chooses("select[name='tapeLengthUnit']", "m");
        crew.presses("The band is up");
        crew.sees("Is this right?");
        crew.writes("#tapeLength", "1350");
        crew.chooses("select[name='tapeLengthUnit']", "mm");
        crew.writes("#meshLength", "1500");
        crew.chooses("select[name='meshLengthUnit']", "mm");
        crew.writes("#fastenerPieces", "10");
        crew.presses("The band is up");
        crew.sees("is up on tree");
        return crew.lastOfPath();
    }

    private static void looksAndReplaces(Visitor crew, String band) {
        crew.seesSoon("/bands/" + band + "/visit", "Look at the band on tree S-MILL-101");
        crew.ticks("saturationPercent", "75");
        crew.writes("#catch-adult", "31");
        crew.ticks("guard", "sound");
        crew.ticks("bycatch", "no");
        crew.ticks("replace", "yes");
        crew.writes("#tapeReel", "R-1");
        crew.writes("#tapeLength", "1360");
        crew.chooses("select[name='tapeLengthUnit']", "mm");
        crew.writes("#bagId", "BAG-1");
        crew.presses("Store this look");
        crew.sees("Stored: band " + band);
        crew.seesSoon("/bands/" + band, "75 % covered");
    }

    private static void takesDown(Visitor crew, String band) {
        crew.opens("/bands/" + band + "/take-down");
        crew.writes("#bagId", "BAG-1");
        crew.ticks("mesh", "reuse");
        crew.ticks("fasteners", "bag");
        crew.presses("The band is down");
        crew.sees("its tape is in bag BAG-1");
        crew.seesSoon("/bands/" + band, "is taken down");
    }

    private static void disposes(Visitor depot) {
        // 1,350 mm replaced and 1,360 mm taken down.
        depot.seesSoon("/waste", "2.71 m");
        depot.ticks("bagIds", "BAG-1");
        depot.writes("#carrier", "CARRIER-2");
        depot.presses("Send to disposal");
        depot.sees("took one bag to disposal.");
        depot.seesSoon("/where?at=disposed", "2.71 m");
    }

    private static void takesBack(Visitor depot) {
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

    private static void everythingAddsUp(Visitor depot) {
        depot.seesSoon("/audit", "Books and field agree.");
        depot.sees("The audit reads zero");
        depot.seesSoon("/", "The audit reads zero.");
        depot.sees("Of 50.00 m of tape received");
    }

    private static void everybodyReads(Chromium chromium, String band) {
        Visitor lead = chromium.signedIn("corin", JourneyPlace.password("corin"));
        for (String path : List.of(
                "/people",
                "/settings",
                "/sites",
                "/sites/new",
                "/trees/new",
                "/trees/S-MILL-101",
                "/bands",
                "/bands/" + band,
                "/round",
                "/stuck-animal",
                "/reels",
                "/reels/R-1",
                "/batches",
                "/batches/F-1",
                "/reorder",
                "/spend",
                "/where",
                "/nowhere")) {
            lead.opens(path);
        }
        Visitor finance = chromium.signedIn("delma", JourneyPlace.password("delma"));
        finance.seesSoon("/spend", "Mill pond woods");
        finance.opens("/reels/new");
        finance.sees("This is for another role");
    }
}
