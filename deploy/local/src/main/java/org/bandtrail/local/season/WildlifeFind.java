package org.bandtrail.local.season;

/** The one bird of the season and what was rightly done for it; see the cautions of the trade. */
final class WildlifeFind {
    /** The code of the licensed wildlife rehabilitator who took the bird; names stay out of the books. */
    private static final String REHABILITATOR = "REHAB-14";

    private WildlifeFind() {}

    /** Writes the find beside the last visit written, and what became of the bird. */
    static void write(SeasonBook book, String bandId) {
        book.bycatch.add(
                book.last("V", 5),
                "small woodpecker",
                "yes",
                "Not pulled off. Sticky areas covered with paper, band cut on both sides, piece left on the bird; "
                        + "dark, lidded, ventilated box, no food or water; rehabilitator called at once; supervisor "
                        + "told; band taken down the same day.",
                REHABILITATOR,
                "yes");
        book.outcomes.add(
                book.last("V", 5),
                bandId,
                "Released at the place of the find after nine days.",
                REHABILITATOR,
                "2026-06-02T14:10:00Z",
                "P-18",
                "2026-06-11T15:00:00Z");
    }
}
