package org.bandtrail.supplystock.variances;

import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;

/**
 * A standard price, and the variances from it, in minor units; above zero is unfavourable. Purchase price variance = (Pa -
 * Ps) x Qa and usage variance = (Qa - Qs) x Ps, with Pa, Ps the actual and the standard price and Qa, Qs the actual and
 * the standard quantity (common practice, no source). Each is rounded once, half up, never price by price.
 *
 * @param kind of the material: quantities are millimetres of tape and mesh, pieces of fasteners
 * @param content what the price is for: micrometres of tape and mesh, pieces of fasteners; above zero
 * @param price minor units for so much, not below zero
 */
record Standard(MaterialKind kind, long content, long price) {
    /** Refuses, by name, a standard that is none. */
    Standard {
        if (content <= 0 || price < 0) {
            throw new IllegalArgumentException(
                    "A standard of [%d] for [%d] is no price. Give a price for a content above zero."
                            .formatted(price, content));
        }
    }

    /** What a quantity costs by the standard, minor units. */
    long cost(long quantity) {
        return new Packing(OrderUnit.REEL, content).priceOf(kind, quantity, price);
    }

    /**
     * The purchase price variance of goods.
     *
     * @param paid what was paid for them, minor units: actual price x actual quantity
     * @param quantity how much was bought, millimetres or pieces; negative with a credit
     */
    long priceVariance(long paid, long quantity) {
        return Math.subtractExact(paid, cost(quantity));
    }

    /**
     * The usage variance of a use.
     *
     * @param used how much was used, millimetres or pieces
     * @param planned how much the plan allowed, millimetres or pieces
     */
    long usageVariance(long used, long planned) {
        return cost(Math.subtractExact(used, planned));
    }
}
