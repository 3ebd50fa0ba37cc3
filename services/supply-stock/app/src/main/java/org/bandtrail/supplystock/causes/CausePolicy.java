package org.bandtrail.supplystock.causes;

import java.time.Duration;

/**
 * How near things must be to speak for a cause.
 *
 * @param lateAfter a fact is late when the books learn of it so long after it happened
 * @param doubledWithin two like facts are perhaps one when they happened so near each other
 * @param quietAfter facts may be missing when none is known from so long before a reel came back
 * @param shortestPieceMm a gap below this is no piece that was not told; no band is so short
 * @param measuringPermille how exactly a length is measured, per mille of the length
 * @param source where the figures come from
 */
public record CausePolicy(
        Duration lateAfter,
        Duration doubledWithin,
        Duration quietAfter,
        long shortestPieceMm,
        int measuringPermille,
        String source) {
    /** A day, ten minutes, two hours, 200 mm, two per mille. */
    public static final CausePolicy USUAL = new CausePolicy(
            Duration.ofHours(24), Duration.ofMinutes(10), Duration.ofHours(2), 200, 2, "common practice, no source");

    /** Whether a figure is the expected one, as exactly as lengths are measured: two units, or the permille of it. */
    boolean near(long figure, long expected) {
        return Math.abs(figure - expected) <= Math.max(2, Math.abs(expected) * measuringPermille / 1000);
    }
}
