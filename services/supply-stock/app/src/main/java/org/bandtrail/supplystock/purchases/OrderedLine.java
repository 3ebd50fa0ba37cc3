package org.bandtrail.supplystock.purchases;

import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.suppliers.Packing;
import org.jspecify.annotations.Nullable;

/**
 * One line of an order.
 *
 * @param line 1, 2, 3 ... within the order
 * @param packing order unit and what is in one
 * @param units order units, 1 or more
 * @param unitPrice minor units for one order unit, in the currency of the order
 * @param quote number of the supplier's quote it was priced from, null if the price was given by hand
 * @param site it is meant for, null if for any
 * @param grant that is to pay, null if not decided
 */
public record OrderedLine(
        int line,
        MaterialCode material,
        MaterialKind kind,
        Packing packing,
        long units,
        long unitPrice,
        @Nullable Integer quote,
        @Nullable SiteId site,
        @Nullable String grant) {

    /** What was ordered, in millimetres or pieces; see {@link Packing#base}. */
    public long ordered() {
        return packing.base(kind, units);
    }

    /** What the whole line costs, minor units. */
    public long price() {
        return Math.multiplyExact(units, unitPrice);
    }

    /**
     * What is still to come. Reels, packs, boxes and pieces are counted: ten ordered and ten delivered is complete,
     * whatever was measured on each. Metres, yards and feet are measured.
     *
     * @param receivedUnits order units counted so far
     * @param received millimetres or pieces so far
     * @return millimetres or pieces, never below zero
     */
    public long remaining(long receivedUnits, long received) {
        return packing.unit().counted()
                ? packing.base(kind, Math.max(0, units - receivedUnits))
                : Math.max(0, ordered() - received);
    }

    /** The price of what is still to come, minor units; see {@link #remaining}. */
    public long committed(long receivedUnits, long received) {
        if (packing.unit().counted()) {
            return Math.multiplyExact(Math.max(0, units - receivedUnits), unitPrice);
        }
        long left = remaining(receivedUnits, received);
        return left == ordered() ? price() : packing.priceOf(kind, left, unitPrice);
    }
}
