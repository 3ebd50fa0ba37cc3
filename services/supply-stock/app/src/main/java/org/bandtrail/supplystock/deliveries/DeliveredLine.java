package org.bandtrail.supplystock.deliveries;

import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line of a delivery: goods of one item.
 *
 * @param line 1, 2, 3 ... within the delivery
 * @param purchaseLine line of the order it fulfils, null if none: not ordered, or another item than ordered
 * @param units order units counted, 0 where the order's unit is a length or there is no order
 * @param cost of the line: by the order's price, or as given
 */
public record DeliveredLine(
        int line,
        @Nullable Integer purchaseLine,
        MaterialCode material,
        MaterialKind kind,
        long units,
        Money cost,
        List<DeliveredHolding> holdings) {

    /** Millimetres measured or pieces counted, all together. */
    public long quantity() {
        return holdings.stream().mapToLong(DeliveredHolding::quantity).sum();
    }

    /**
     * How many of the line's order units are with the first so many of its reels or batches; all of them with all.
     * Boxes of several reels are not complete before the last reel is.
     */
    public long unitsOf(long reelsOrBatches) {
        return units * reelsOrBatches / holdings.size();
    }
}
