package org.bandtrail.supplystock.holdings;

/** The kinds of places on the trail, in the order material passes them. */
public enum PlaceKind {
    /** Outside, before receipt. Its balance is minus what was received. */
    SUPPLIER("supplier"),
    /** A depot's store. */
    DEPOT("depot"),
    /** In the custody of one person. */
    CREW("crew"),
    /** On a tree. */
    TREE("tree"),
    /** In a waste bag. */
    BAG("bag"),
    /** Gone with a disposal load. */
    DISPOSED("disposed"),
    /** Given up in the books, with a reason. */
    WRITTEN_OFF("written-off"),
    /** What a person should have brought back and did not; negative if more came back than the books knew. */
    MISSING("missing");

    private final String word;

    PlaceKind(String word) {
        this.word = word;
    }

    /** The word in the text form of a place. */
    public String word() {
        return word;
    }

    /** Whether the cost of what is here is still cost of stock. Missing material is, until somebody writes it off. */
    public boolean inStock() {
        return this == DEPOT || this == CREW || this == MISSING;
    }

    /** The kind of this word. */
    static PlaceKind of(String word) {
        for (PlaceKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(
                "Place kind [%s] does not exist. Use supplier, depot, crew, tree, bag,".formatted(word)
                        + " disposed, written-off or missing.");
    }
}
