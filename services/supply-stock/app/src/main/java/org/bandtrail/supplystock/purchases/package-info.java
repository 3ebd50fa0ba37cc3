/**
 * A purchase is an order to a supplier: lines in the supplier's own order unit, priced from a quote or by hand, to be
 * delivered to a depot on an expected day. Its life: ordered, partly received, received; or closed with something still
 * to come, or cancelled before anything came. What arrives is a fact and always counts, even for a cancelled order; what
 * is sent back to the supplier is to come again.
 *
 * <p>{@link org.bandtrail.supplystock.purchases.Purchases} answers orders with ordered, received and remaining
 * quantities; {@link org.bandtrail.supplystock.purchases.OnOrder} answers what is on order for an item and a depot, and
 * what money is committed: ordered and not yet received.
 */
@NullMarked
package org.bandtrail.supplystock.purchases;

import org.jspecify.annotations.NullMarked;
