package org.bandtrail.siteinstalls.photos;

import java.util.Arrays;
import java.util.Locale;

/** What a photo shows. */
public enum PhotoOf {
    /** A tree. */
    TREE,
    /** A band on a tree. */
    BAND,
    /** A site. */
    SITE;

    /** The word in requests, small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The kind of this word.
     *
     * @throws IllegalArgumentException naming the word that is none
     */
    public static PhotoOf spelt(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Photos are of a tree, a band or a site, not of [%s].".formatted(word)));
    }
}
