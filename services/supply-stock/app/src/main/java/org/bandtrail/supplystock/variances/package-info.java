/**
 * Variances: where the programme paid another price than was quoted, and where it used more or less than its kit lists
 * planned, by item and month. Purchase price variance = (actual price - standard price) x actual quantity; usage variance
 * = (actual quantity - standard quantity) x standard price: the two usual controls of a standard cost (common practice, no
 * source). Above zero is unfavourable: more was spent than the standard allows.
 *
 * <p>The standard of a price is the supplier's quote the order was made by, at the break its quantity reached; where an
 * order was priced by hand, the usual cost of the item. The standard of a use is what the kit lists of the month planned
 * for their trees, at the item's usual cost. Only kits that are settled count, because until then nobody knows what was
 * used. Nothing here decides anything, and nothing is booked: stock stays at what it did cost.
 */
@NullMarked
package org.bandtrail.supplystock.variances;

import org.jspecify.annotations.NullMarked;
