package org.bandtrail.siteinstalls.hazards;

/**
 * A hazard of one site.
 *
 * @param kind one of {@link HazardKinds}
 * @param note where it is on the site, may be empty, at most 300 characters
 */
public record Hazard(String kind, String note) {
    private static final int LONGEST = 300;

    /**
     * Strips blanks.
     *
     * @throws IllegalArgumentException naming the note that is too long
     */
    public Hazard {
        kind = kind.strip();
        note = note.strip();
        if (note.length() > LONGEST) {
            throw new IllegalArgumentException("The note on hazard [%s] has %d characters. Give at most %d."
                    .formatted(kind, note.length(), LONGEST));
        }
    }
}
