package org.bandtrail.supplystock.spend;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One charge behind a figure of the spend.
 *
 * @param holding reel or batch
 * @param what what happened to it, for example fitted
 * @param account who paid: {@code site:...}, {@code written-off} or {@code written-down}
 * @param quantity millimetres or pieces; negative if they came back
 * @param minor minor units of the currency
 * @param happenedAt its own date; {@code month} is the one it posts to, later if its own was closed
 */
public record SpendLine(
        String holding,
        String id,
        String materialCode,
        String kind,
        String what,
        @Nullable String note,
        String account,
        @Nullable String treeId,
        @Nullable String personId,
        String currency,
        long quantity,
        long minor,
        Instant happenedAt,
        Instant recordedAt,
        String month) {

    /**
     * Which charges. A null leaves that open.
     *
     * @param account whole account, for example {@code site:S-MILL}
     */
    public record Asked(
            @Nullable String account,
            @Nullable String treeId,
            @Nullable String materialCode,
            @Nullable String personId,
            @Nullable String what,
            Months months) {}
}
