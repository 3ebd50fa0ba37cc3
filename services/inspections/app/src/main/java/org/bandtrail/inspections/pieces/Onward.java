package org.bandtrail.inspections.pieces;

import java.util.Locale;

/** Where mesh or fasteners go when they come off a trunk. Tape has no choice: it goes into the bag. */
public enum Onward {
    /** Into the waste bag. */
    BAG,
    /** Back to the person, for further use. */
    REUSE;

    /**
     * Reads {@code bag} or {@code reuse}.
     *
     * @throws IllegalArgumentException naming the text and the two choices
     */
    public static Onward of(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "bag" -> BAG;
            case "reuse" -> REUSE;
            default ->
                throw new IllegalArgumentException(
                        "[%s] does not say where the piece went. Write bag or reuse.".formatted(text));
        };
    }
}
