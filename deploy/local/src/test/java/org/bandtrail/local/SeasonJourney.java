package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
            DepotSteps.receives(depot);
            DepotSteps.bringsInTrees(depot, folder);
            DepotSteps.handsOut(depot);
            Visitor crew = chromium.signedIn("avel", JourneyPlace.password("avel"));
            String band = CrewSteps.fits(crew);
            CrewSteps.looksAndReplaces(crew, band);
            CrewSteps.takesDown(crew, band);
            DepotSteps.disposes(depot);
            DepotSteps.takesBack(depot);
            everythingAddsUp(depot);
            everybodyReads(chromium, band);
            assertThat(chromium.violations()).as("on %s", chromium.checked()).isEmpty();
        }
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
