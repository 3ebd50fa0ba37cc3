/**
 * A supplier is somebody the programme buys tape, mesh or fasteners from, with the prices they quoted: for one item, in
 * the supplier's own order unit (reels, packs, boxes, metres, yards, feet, pieces), with price breaks by quantity, the
 * multiple in which it is sold, the least that is sold, the promised lead time and the days on which the quote holds.
 *
 * <p>Every order unit is worth an exact number of micrometres or pieces, so an order in yards and a receipt in metres
 * meet without a gap; see {@link org.bandtrail.supplystock.suppliers.Packing}. Wishes: register a supplier, note a quote,
 * withdraw it. A quote is never edited: prices change by a new quote, and old orders keep the one they were made by.
 *
 * <p>Names of people who answer the supplier's telephone are not kept here; events last, people may want to be forgotten.
 */
@NullMarked
package org.bandtrail.supplystock.suppliers;

import org.jspecify.annotations.NullMarked;
