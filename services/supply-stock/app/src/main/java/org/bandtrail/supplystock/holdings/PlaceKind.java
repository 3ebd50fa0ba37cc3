package org.bandtrail.supplystock.holdings;

/** The kinds of places on the trail, in the order material passes them. */
public enum PlaceKind {
    /** Outside, before receipt. Its balance is minus what was received. */
    SUPPLIER("supplier"),
    /** At a depot, but not to be used until somebody accepts or releases it. */
    SET_ASIDE("set-aside"),
    /** A depot's store; its bins are part of it. */
    DEPOT("depot"),
    /** On the way from one place to another, under the transfer's identity. */
    IN_TRANSIT("in-transit"),
    /** In or on a vehicle. */
    VEHICLE("vehicle"),
    /** In the custody of one person. */
    CREW("crew"),
    /** On a tree. */
    TREE("tree"),
    /** In a waste bag. */
    BAG("bag"),
    /** Gone with a disposal load. */
    DISPOSED("disposed"),
    /** Cut lengthwise into narrower reels. Negative for a reel that was made from a wider one. */
    SLIT("slit"),
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
        return switch (this) {
            case SET_ASIDE, DEPOT, IN_TRANSIT, VEHICLE, CREW, MISSING -> true;
            case SUPPLIER, TREE, BAG, DISPOSED, SLIT, WRITTEN_OFF -> false;
        };
    }

    /** Whether material enters the books from here: from outside, or out of a wider reel. */
    public boolean isOrigin() {
        return this == SUPPLIER || this == SLIT;
    }

    /** The kind of this word. */
    static PlaceKind of(String word) {
        for (PlaceKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(
                "Place kind [%s] does not exist. Use supplier, set-aside, depot,".formatted(word)
                        + " in-transit, vehicle, crew, tree, bag, disposed, slit, written-off or missing.");
    }
}
