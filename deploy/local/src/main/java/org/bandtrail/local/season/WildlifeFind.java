package org.bandtrail.local.season;

/** The one bird of the season and what was rightly done for it; see the cautions of the trade. */
final class WildlifeFind {
    private WildlifeFind() {}

    /** Writes the find beside the last visit written. */
    static void write(SeasonBook book) {
        book.bycatch.add(
                book.last("V", 5),
                "small woodpecker",
                "yes",
                "Not pulled off. Sticky areas covered with paper, band cut on both sides, piece left on the bird; "
                        + "dark, lidded, ventilated box, no food or water; rehabilitator called at once; supervisor told; "
                        + "band taken down the same day.",
                "licensed wildlife rehabilitator");
    }
}
