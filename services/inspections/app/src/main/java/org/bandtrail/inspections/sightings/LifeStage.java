package org.bandtrail.inspections.sightings;

/** Stages of the spotted lanternfly, EPPO code LYCMDE: eggs, four nymph instars, adult. */
public enum LifeStage {
    EGG_MASS,
    INSTAR_1,
    INSTAR_2,
    INSTAR_3,
    INSTAR_4,
    ADULT;

    /** The word used outside, for example {@code instar-2}. */
    public String spelt() {
        return Spelling.of(this);
    }

    /**
     * Reads the word used outside.
     *
     * @throws IllegalArgumentException naming the word and all choices
     */
    public static LifeStage of(String text) {
        return Spelling.read(LifeStage.class, "Life stage", text);
    }
}
