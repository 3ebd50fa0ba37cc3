package org.bandtrail.supplystock.receiving;

import java.util.List;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.purchases.OrderedLine;

/**
 * What a delivered line costs by the order's price, and what each of its reels and batches costs. The line is rounded
 * once; the parts always add up to it (method of largest remainders).
 */
final class LineCost {
    private LineCost() {}

    /**
     * The cost of a line, minor units: units counted times the price, or the length measured at the price of a length.
     *
     * @param quantity millimetres or pieces
     */
    static long of(OrderedLine ordered, long units, long quantity) {
        return ordered.packing().unit().counted()
                ? Math.multiplyExact(units, ordered.unitPrice())
                : ordered.packing().priceOf(ordered.kind(), quantity, ordered.unitPrice());
    }

    /**
     * The parts of the reels and batches. One unit each: equal parts, because a reel costs what a reel costs, whatever
     * was measured on it. Otherwise by quantity.
     */
    static List<Long> split(long cost, long units, List<Long> quantities) {
        return units == quantities.size()
                ? LargestRemainder.split(
                        cost, quantities.stream().map(each -> 1L).toList())
                : LargestRemainder.split(cost, quantities);
    }
}
