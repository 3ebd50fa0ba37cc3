package org.bandtrail.supplystock.books;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the ledger as people read it.
 *
 * @param line its place in the ledger, and the cursor of the next page
 * @param holding reel or batch
 * @param materialCode empty before its receipt
 * @param what the trade's word
 * @param adjusts whether the trial counts it as an adjustment
 * @param quantity millimetres or pieces; 0 where only value moves
 * @param outMinor value that left the source, in minor units
 * @param inMinor value that came to the target
 * @param accountMinor what the account paid; negative if it was paid back
 * @param period month it posts to; may be later than the month it happened in
 */
public record LineRow(
        String line,
        String holding,
        String id,
        String materialCode,
        String kind,
        String currency,
        String what,
        boolean adjusts,
        @Nullable String note,
        @Nullable String source,
        @Nullable String target,
        long quantity,
        long outMinor,
        long inMinor,
        @Nullable String account,
        long accountQuantity,
        long accountMinor,
        String siteId,
        String treeId,
        String personId,
        String by,
        Instant happenedAt,
        Instant recordedAt,
        String period) {}
