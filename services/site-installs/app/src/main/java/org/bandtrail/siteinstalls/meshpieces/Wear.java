package org.bandtrail.siteinstalls.meshpieces;

import java.util.Arrays;
import java.util.Locale;

/** How worn a piece is. The names are stored and never renamed. */
public enum Wear {
    /** As good as new. */
    GOOD,
    /** Bent or rusty, keeps animals off all the same; look at it before it is fitted. */
    WORN,
    /** Holes or broken wires; it goes into a waste bag. */
    SCRAP;

    /** The word for it, as people write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The wear of a word.
     *
     * @throws IllegalArgumentException naming the word
     */
    public static Wear of(String word) {
        return Arrays.stream(values())
                .filter(wear -> wear.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Wear [%s] is not known. Use good, worn or scrap.".formatted(word)));
    }
}
