package org.bandtrail.inspections.pieces;

import org.jspecify.annotations.Nullable;

/**
 * One portion that went from one place to another.
 *
 * @param portion what went
 * @param source where it was, see {@link Places}
 * @param target where it is now
 */
public record Move(Portion portion, String source, String target) {

    /** The bag this move put the portion into, or null if it went elsewhere. */
    public @Nullable String bagFilled() {
        return Places.bagIn(target);
    }

    /** The bag this move took the portion out of, or null if it was elsewhere. */
    public @Nullable String bagEmptied() {
        return Places.bagIn(source);
    }
}
