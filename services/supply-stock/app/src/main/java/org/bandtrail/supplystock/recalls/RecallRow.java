package org.bandtrail.supplystock.recalls;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One recall as people see it.
 *
 * @param lot the maker's lot, upper case
 * @param by who recalled it
 * @param holdings reels and batches of which it set something aside
 * @param lengthMm tape and mesh it set aside so far, millimetres
 * @param pieces fasteners it set aside so far
 * @param liftedAt null while it is open
 */
public record RecallRow(
        String recallId,
        String lot,
        String reason,
        String by,
        Instant startedAt,
        long holdings,
        long lengthMm,
        long pieces,
        @Nullable Instant liftedAt,
        @Nullable String liftedBy,
        @Nullable String liftReason) {}
