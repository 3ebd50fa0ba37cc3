package org.bandtrail.local.season;

/** What was typed wrongly at a tree, asked about at once, and put right before it was stored. */
final class Slips {
    private Slips() {}

    /** Writes the two slips: the loader has them checked before it sends the band as it was meant. */
    static void write(SeasonBook book) {
        book.slips.add(
                "B-0042",
                "girth",
                "46 1/8 ft",
                "3 ft 10 1/8 in",
                "inches typed as feet; asked at the tree, corrected there");
        book.slips.add(
                "B-0041",
                "tapeLength",
                "2.4 in",
                "2 ft 5 1/4 in",
                "feet typed as inches; asked at the tree, corrected there");
    }
}
