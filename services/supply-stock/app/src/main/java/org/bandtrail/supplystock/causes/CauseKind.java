package org.bandtrail.supplystock.causes;

/** The slips the finder knows, as a person would call them. */
public enum CauseKind {
    /** A fact reached the books long after it happened, or has not reached them yet. */
    LATE_ENTRY("late entry"),
    /** Somebody read or wrote another reel's number, one sign away. */
    WRONG_LABEL("wrong reel number"),
    /** A length was written in one unit and taken in another. */
    UNIT_MISTAKE("unit mistake"),
    /** One fact was told twice. */
    DOUBLED_FACT("told twice"),
    /** Tape and mesh were taken for each other. */
    SWAPPED_REEL("tape and mesh exchanged");

    private final String words;

    CauseKind(String words) {
        this.words = words;
    }

    /** The cause in words. */
    public String words() {
        return words;
    }
}
