package org.bandtrail.supplystock.countplans;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One item at one place with when it is to be counted.
 *
 * @param place the depot or bin
 * @param holdings how many reels or batches of it lie there
 * @param valueClass A, B or C
 * @param everyDays days between two counts of this class
 * @param lastCountedAt when it was last counted there, null if never
 * @param dueOn the day (UTC) on which it is due; null if it was never counted and so is due at once
 * @param due whether it is due today or was before
 */
public record DueCount(
        String place,
        String materialCode,
        String kind,
        long holdings,
        ValueClass valueClass,
        int everyDays,
        @Nullable Instant lastCountedAt,
        @Nullable LocalDate dueOn,
        boolean due) {
    /** Orders the plan, the most urgent first: never counted, then by day, class, place and item. */
    @JsonIgnore
    String key() {
        return "%s %s %s %s".formatted(dueOn == null ? "0000-00-00" : dueOn, valueClass, place, materialCode);
    }
}
