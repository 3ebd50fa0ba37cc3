package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;

/** What the crew does on the journey, page by page. */
final class CrewSteps {
    private CrewSteps() {}

    static String fits(Visitor crew) {
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

    static void looksAndReplaces(Visitor crew, String band) {
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

    static void takesDown(Visitor crew, String band) {
        crew.opens("/bands/" + band + "/take-down");
        crew.writes("#bagId", "BAG-1");
        crew.ticks("mesh", "reuse");
        crew.ticks("fasteners", "bag");
        crew.presses("The band is down");
        crew.sees("its tape is in bag BAG-1");
        crew.seesSoon("/bands/" + band, "was taken down");
    }
}
