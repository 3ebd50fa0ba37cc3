package org.bandtrail.siteinstalls.duplicates;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What was decided of a pair last.
 *
 * @param number counted up with every decision
 * @param first the tree whose identity sorts first
 * @param second the other
 * @param kept the tree that stays, null if they are not the same
 * @param reason why
 * @param by who decided
 * @param decidedAt when
 */
record PairDecision(
        long number, String first, String second, @Nullable String kept, String reason, String by, Instant decidedAt) {
    /** The tree that was merged away, null if they are not the same. */
    public @Nullable String merged() {
        if (kept == null) {
            return null;
        }
        return kept.equals(first) ? second : first;
    }
}
