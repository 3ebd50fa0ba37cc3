package org.bandtrail.inspections.sightings;

/** How the guard over the tape was found. */
public enum GuardState {
    /** Stands off the tape all round, nothing can get under it. */
    SOUND,
    /** Touches the tape somewhere, so that an animal can be caught through it. */
    TOUCHING,
    /** Has an opening an animal can pass. */
    GAP,
    /** Is not there. */
    MISSING;

    /** The word used outside, for example {@code sound}. */
    public String spelt() {
        return Spelling.of(this);
    }

    /**
     * Reads the word used outside.
     *
     * @throws IllegalArgumentException naming the word and all choices
     */
    public static GuardState of(String text) {
        return Spelling.read(GuardState.class, "Guard", text);
    }

    /** Tells whether wildlife can reach the tape. */
    public boolean failed() {
        return this != SOUND;
    }
}
