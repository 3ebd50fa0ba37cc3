package org.bandtrail.supplystock.counts;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One count as people see it.
 *
 * @param place the depot or bin
 * @param stage COUNTING, REVIEW, APPROVED or CANCELLED
 * @param round 1 is the first count
 * @param lines how many lines it has, found ones included
 * @param open how many lines wait for a figure in this round
 * @param differing how many lines differ; null while it is counted, because whoever counts is blind
 * @param closedBy who approved or cancelled, or null
 */
public record CountRow(
        String countId,
        String place,
        String stage,
        int round,
        long lines,
        long open,
        @Nullable Long differing,
        String openedBy,
        Instant openedAt,
        @Nullable String closedBy,
        @Nullable Instant closedAt,
        @Nullable String cancelledBecause) {

    /** Whether whoever reads may not see the books. */
    boolean blind() {
        return stage.equals("COUNTING");
    }

    /**
     * One line. Quantities are millimetres of a reel, pieces of a batch.
     *
     * @param holding {@code reel} or {@code batch}
     * @param unit {@code mm} or {@code pieces}
     * @param onSheet false for what was found and not expected
     * @param book frozen figure, null while the count is blind
     * @param counted last figure of the current round; of any round once all is counted; null if there is none
     * @param difference counted less book, null while the count is blind
     * @param value what the difference cost, without sign; null while blind or while its receipt is not in the books
     * @param elsewhere where the books have what was found, null while the count is blind
     * @param toRecount whether it has to be counted again in this round
     * @param countedBy who counted it, round by round
     * @param reason why it differs
     */
    public record Line(
            String holding,
            String id,
            String place,
            @Nullable String materialCode,
            @Nullable String kind,
            String unit,
            boolean onSheet,
            @Nullable Long book,
            @Nullable Long counted,
            @Nullable Long difference,
            @Nullable Money value,
            @Nullable String elsewhere,
            boolean toRecount,
            List<String> countedBy,
            @Nullable String reason) {}

    /**
     * A count with its lines.
     *
     * @param differences value of all differences without sign, one amount for each currency; empty while blind
     * @param secondPersonFromMinor from this value on somebody approves who did not count; minor units
     */
    public record Whole(CountRow count, List<Line> lines, List<Money> differences, long secondPersonFromMinor) {}
}
