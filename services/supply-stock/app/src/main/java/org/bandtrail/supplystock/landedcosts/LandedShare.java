package org.bandtrail.supplystock.landedcosts;

import org.bandtrail.kernel.Money;

/**
 * The share of one reel or batch.
 *
 * @param line of the delivery
 * @param reel false for a batch
 */
public record LandedShare(String deliveryId, int line, boolean reel, String id, Money amount) {}
