package org.bandtrail.frontdesk.wording;

/** The unit system a person reads and writes in. */
public enum Units {
    /** Metres and millimetres. */
    SI("mm", "m"),
    /** Feet and inches. */
    US("in", "ft");

    private final String small;
    private final String large;

    Units(String small, String large) {
        this.small = small;
        this.large = large;
    }

    /** The unit a short length is entered in unless another is chosen: girth, cut length. */
    public String small() {
        return small;
    }

    /** The unit a long length is entered in unless another is chosen: reels, what is left of a reel. */
    public String large() {
        return large;
    }
}
