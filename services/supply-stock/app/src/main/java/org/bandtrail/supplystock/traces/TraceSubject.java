package org.bandtrail.supplystock.traces;

import java.util.Locale;
import org.bandtrail.supplystock.deliveries.Lots;
import org.jspecify.annotations.Nullable;

/**
 * What a trace is about. Two suppliers may print the same lot, so a lot may be asked for with its supplier.
 *
 * @param id as it is kept
 * @param supplier of a lot; null for a lot of whichever supplier, and for everything that is not a lot
 */
public record TraceSubject(
        TraceOf what, String id, @Nullable String supplier) {
    /** Spells the identity as it is kept; the supplier counts for a lot only. */
    public TraceSubject {
        id = what == TraceOf.LOT ? Lots.spelt(id) : id.strip().toUpperCase(Locale.ROOT);
        supplier = what != TraceOf.LOT || supplier == null || supplier.isBlank()
                ? null
                : supplier.strip().toUpperCase(Locale.ROOT);
    }

    /** Something that is not a lot, or a lot of whichever supplier. */
    static TraceSubject of(TraceOf what, String id) {
        return new TraceSubject(what, id, null);
    }

    /** A lot of one supplier, or of whichever if the supplier is null. */
    public static TraceSubject lot(String lot, @Nullable String supplier) {
        return new TraceSubject(TraceOf.LOT, lot, supplier);
    }

    /** The reels and batches it begins with: columns {@code holding} and {@code id}; with {@code :asked}, {@code :from}. */
    String holdings() {
        return what.holdings() + (supplier == null ? "" : " AND supplier_id = :from");
    }
}
