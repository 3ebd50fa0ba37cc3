package org.bandtrail.supplystock.custody;

/** Where something that was handed out can be, as seen from the person who had it. */
enum Station {
    /** In the depot before the handout. Its figure is minus what was handed out. */
    HANDED_OUT("handed-out"),
    /** Still out. */
    WITH_PERSON("with-person"),
    /** Not brought back and not explained. */
    MISSING("missing"),
    /** On a tree, less what came back from trees into use. */
    FITTED("fitted"),
    /** Back in a depot. */
    RETURNED("returned"),
    /** In a waste bag without having been on a tree. */
    SCRAPPED("scrapped"),
    /** Missing that was written off, or found. */
    SETTLED("settled"),
    /** With somebody else or in a vehicle. */
    ELSEWHERE("elsewhere");

    private final String word;

    Station(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    static Station of(String word) {
        for (Station station : values()) {
            if (station.word.equals(word)) {
                return station;
            }
        }
        throw new IllegalArgumentException("Station [%s] does not exist. Look at who wrote it.".formatted(word));
    }
}
