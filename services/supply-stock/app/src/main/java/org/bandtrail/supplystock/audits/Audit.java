package org.bandtrail.supplystock.audits;

import java.time.Instant;
import java.util.List;

/**
 * What the audit read.
 *
 * @param zero whether every law holds
 * @param laws each with both sides; their difference must be zero
 * @param findings where books and field disagree; open questions, not errors of the books
 */
public record Audit(Instant readAt, boolean zero, List<Line> laws, List<Finding> findings) {

    /** A law with its difference, as it is shown. */
    public record Line(String name, String statement, long left, long right, long difference, String unit) {
        static Line of(Law law) {
            return new Line(law.name(), law.statement(), law.left(), law.right(), law.difference(), law.unit());
        }
    }
}
