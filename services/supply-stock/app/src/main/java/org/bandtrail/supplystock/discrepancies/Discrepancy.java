package org.bandtrail.supplystock.discrepancies;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * An open question as people see it: a {@link Finding} with its worth, age and likely causes.
 *
 * @param what {@code missing}, {@code surplus} or {@code used more than the books knew}
 * @param material {@code reel} or {@code batch}
 * @param personId whom to ask, or null
 * @param quantity balance in the unit, negative if more was taken than the books knew
 * @param unit {@code mm} or {@code pieces}
 * @param worth what the amount cost, without sign; null while its receipt is not in the books
 * @param since when the last move to or from this place happened
 * @param ageDays whole days since then
 * @param lastHolder who had the reel or batch last, or null
 * @param causes likely causes, the likeliest first; empty if nothing in the books speaks for any
 * @param waitsUntil the day on which it comes back, or null if it does not wait
 * @param waitsBecause why it waits, or null
 */
public record Discrepancy(
        String what,
        String material,
        String id,
        String place,
        @Nullable String personId,
        long quantity,
        String unit,
        @Nullable Money worth,
        Instant since,
        long ageDays,
        @Nullable String lastHolder,
        String sentence,
        List<Likely> causes,
        @Nullable LocalDate waitsUntil,
        @Nullable String waitsBecause) {

    /**
     * A likely cause.
     *
     * @param kind LATE_ENTRY, WRONG_LABEL, UNIT_MISTAKE, DOUBLED_FACT or SWAPPED_REEL
     * @param words the cause in words
     * @param weight how well the evidence fits, 0 to 100; no probability
     * @param other the other reel or batch that is meant, or null
     * @param through where the material really is if this is the cause, or null
     * @param quantity how much of it, millimetres or pieces
     */
    public record Likely(
            String kind,
            String words,
            int weight,
            String evidence,
            @Nullable String other,
            @Nullable String through,
            long quantity) {}
}
