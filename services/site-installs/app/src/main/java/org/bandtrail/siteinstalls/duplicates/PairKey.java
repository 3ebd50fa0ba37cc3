package org.bandtrail.siteinstalls.duplicates;

import org.jspecify.annotations.Nullable;

/**
 * Where a page of pairs ends. As text both identities with a tilde between, which no identity contains.
 *
 * @param first identity of the first tree
 * @param second identity of the second
 */
record PairKey(String first, String second) {
    private static final String BETWEEN = "~";

    /** Before all pairs. */
    static final PairKey START = new PairKey("", "");

    static PairKey of(DuplicatePair pair) {
        return new PairKey(pair.first().treeId(), pair.second().treeId());
    }

    /**
     * From its text.
     *
     * @throws IllegalArgumentException if it is none that was given out
     */
    static PairKey parse(@Nullable String text) {
        if (text == null || text.isEmpty()) {
            return START;
        }
        String[] parts = text.split(BETWEEN, -1);
        if (parts.length != 2) {
            throw new IllegalArgumentException(
                    "after [%s] is no place in this list. Begin without it.".formatted(text));
        }
        return new PairKey(parts[0], parts[1]);
    }

    @Override
    public String toString() {
        return first + BETWEEN + second;
    }
}
