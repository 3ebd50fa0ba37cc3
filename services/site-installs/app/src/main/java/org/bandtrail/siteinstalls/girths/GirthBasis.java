package org.bandtrail.siteinstalls.girths;

/** What a written measurement is a measurement of. */
public enum GirthBasis {
    /** Round the trunk, with a tape. */
    GIRTH("girth"),
    /** Across the trunk, with a caliper or a diameter tape; forest inventories write DBH. */
    DIAMETER("diameter");

    private final String word;

    GirthBasis(String word) {
        this.word = word;
    }

    /** The word for messages. */
    public String word() {
        return word;
    }

    /** The other one: what a person meant who mixed the two up. */
    public GirthBasis other() {
        return this == GIRTH ? DIAMETER : GIRTH;
    }
}
