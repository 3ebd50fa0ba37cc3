package org.bandtrail.local.season;

/** The kinds of facts of a season, in the order in which one day's facts are sent, with the word for the progress. */
enum Kind {
    LOOK("trees looked at"),
    REEL("reels received"),
    BATCH("fasteners received"),
    HANDOUT("kits handed out"),
    FIT("bands fitted"),
    VISIT("visits"),
    TEARDOWN("teardowns"),
    OUTCOME("what became of an animal"),
    RETURN("kits back"),
    LOAD("waste disposed");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    /** For a person, such as {@code visits}. */
    String words() {
        return words;
    }
}
