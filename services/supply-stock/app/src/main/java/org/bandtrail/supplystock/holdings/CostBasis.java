package org.bandtrail.supplystock.holdings;

import org.bandtrail.supplystock.costs.PieceCost;

/**
 * From where on the cost of a reel or batch is spread. At the receipt the whole cost lies on the whole quantity. When
 * the cost changes later (an invoice difference, freight, a write-down, goods sent back), what was charged until then
 * stands, and what is left of the cost lies on what is left of the quantity. So no accounts are opened again and no
 * cent leaks.
 *
 * @param usedFrom millimetres or pieces used when the cost last changed, 0 or more
 * @param spentBefore minor units that had left stock by then, write-downs included
 * @param writtenDown part of it that nobody used: all write-downs so far
 */
public record CostBasis(long usedFrom, long spentBefore, long writtenDown) {
    /** The whole cost on the whole quantity. */
    public static final CostBasis START = new CostBasis(0, 0, 0);

    /**
     * The cost that has left stock once so much is used: cumulative, halves rounded up (see {@link PieceCost}).
     *
     * @param used millimetres or pieces; below 0 counts as 0, above {@code bought} as all
     * @param bought millimetres or pieces
     * @param cost minor units of the whole, as now known
     */
    long of(long used, long bought, long cost) {
        long reached = Math.clamp(used, 0, bought);
        if (reached >= usedFrom) {
            return bought == usedFrom
                    ? cost
                    : spentBefore + new PieceCost(cost - spentBefore, bought - usedFrom).ofFirst(reached - usedFrom);
        }
        return writtenDown + new PieceCost(spentBefore - writtenDown, usedFrom).ofFirst(reached);
    }
}
