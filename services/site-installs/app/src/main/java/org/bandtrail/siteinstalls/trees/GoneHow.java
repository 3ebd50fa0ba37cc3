package org.bandtrail.siteinstalls.trees;

/** How a tree went. */
public enum GoneHow {
    /** Somebody cut it down. */
    FELLED("felled"),
    /** Wind, snow or age brought it down. */
    FALLEN("fallen"),
    /** It stands but is dead. */
    DEAD("dead"),
    /** A crew stood at the place and there was no such tree. */
    NOT_FOUND("not found");

    private final String words;

    GoneHow(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
