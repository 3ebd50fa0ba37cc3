/**
 * What happens at the counter when a supplier's van stands at the door: somebody counts and measures, the order is
 * compared, identities and costs are given, and reels, batches, order and delivery are told in one transaction, all or
 * none. Later the same counter accepts what was set aside, or sends it back. The rules of a delivery are in
 * {@code deliveries}; here they meet those of orders, items, reels and batches.
 */
@NullMarked
package org.bandtrail.supplystock.receiving;

import org.jspecify.annotations.NullMarked;
