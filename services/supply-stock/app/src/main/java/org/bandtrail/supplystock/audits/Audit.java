package org.bandtrail.supplystock.audits;

import java.time.Instant;
import java.util.List;
import org.bandtrail.supplystock.discrepancies.Finding;
import org.jspecify.annotations.Nullable;

/**
 * What the audit read.
 *
 * @param zero whether every law holds, and, if it was counted again, whether every kept sum is that of its rows
 * @param laws each with both sides; their difference must be zero
 * @param findings where books and field disagree; open questions, not errors of the books
 * @param recount what counting every row again found, or null if nobody asked for it
 */
public record Audit(
        Instant readAt,
        boolean zero,
        List<Line> laws,
        List<Finding> findings,
        @Nullable Recounted recount) {

    /**
     * Every kept sum beside the sum of its rows.
     *
     * @param moves rows of the histories that were read
     * @param sums kept on the left, counted on the right; their difference must be zero
     */
    public record Recounted(long moves, List<Line> sums) {}

    /** A law with its difference, as it is shown. */
    public record Line(String name, String statement, long left, long right, long difference, String unit) {
        static Line of(Law law) {
            return new Line(law.name(), law.statement(), law.left(), law.right(), law.difference(), law.unit());
        }
    }
}
