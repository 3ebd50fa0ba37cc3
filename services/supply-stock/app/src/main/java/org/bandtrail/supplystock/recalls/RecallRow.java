package org.bandtrail.supplystock.recalls;

import java.time.Instant;
import org.bandtrail.supplystock.traces.Traces;
import org.jspecify.annotations.Nullable;

/**
 * One recall as people see it.
 *
 * @param lot the maker's lot, upper case
 * @param supplierId whose lot; null in recalls of older days, which meant whichever supplier's
 * @param by who recalled it
 * @param holdings reels and batches of which it set something aside
 * @param lengthMm tape and mesh it set aside so far, millimetres
 * @param pieces fasteners it set aside so far
 * @param liftedAt null while it is open
 */
public record RecallRow(
        String recallId,
        String lot,
        @Nullable String supplierId,
        String reason,
        String by,
        Instant startedAt,
        long holdings,
        long lengthMm,
        long pieces,
        @Nullable Instant liftedAt,
        @Nullable String liftedBy,
        @Nullable String liftReason) {
    /** Whether it takes this lot out of use. */
    boolean means(Traces.SuppliersLot one) {
        return lot.equals(one.lot()) && (supplierId == null || supplierId.equals(one.supplierId()));
    }

    /** The lot and whose it is, as people say it. */
    String saying() {
        return supplierId == null ? lot : lot + " of " + supplierId;
    }
}
