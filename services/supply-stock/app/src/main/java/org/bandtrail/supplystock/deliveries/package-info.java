/**
 * A delivery is what a supplier brought on one day, counted and measured at the counter: length, width, lot, expiry of
 * the adhesive and condition of every reel and batch. It may fulfil an order or come without one. What differs from the
 * order or the item (short, over, damaged, another item, another width, too old) is named as a finding; the goods are in
 * the books all the same, because they are there.
 *
 * <p>Wishes: record a delivery, accept what was set aside, send it back to the supplier. Goods that are not accepted at
 * once lie apart, where nobody hands them out. Each reel and batch gets an identity, proposed from the supplier's and a
 * running number.
 *
 * <p>{@link org.bandtrail.supplystock.deliveries.Lots} answers lot and expiry of every reel and batch.
 */
@NullMarked
package org.bandtrail.supplystock.deliveries;

import org.jspecify.annotations.NullMarked;
