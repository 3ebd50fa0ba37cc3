package org.bandtrail.inspections.sightings;

/** What a visit answers. Only {@link #READ} says anything about the catch. */
public enum Answer {
    /** The band was looked at and counted; no insect counted is a true zero. */
    READ,
    /** The tree or the band was not found. */
    NOT_FOUND,
    /** The band was found but not counted, for example because of rain or wasps. */
    NOT_READ,
    /** The tree is there, the band is not. */
    BAND_MISSING;

    /** The word used outside, for example {@code not-read}. */
    public String spelt() {
        return Spelling.of(this);
    }

    /**
     * Reads the word used outside.
     *
     * @throws IllegalArgumentException naming the word and all choices
     */
    public static Answer of(String text) {
        return Spelling.read(Answer.class, "Answer", text);
    }
}
