/**
 * Traces: from a maker's lot to every reel and batch of it and on to every tree, crew, waste bag and load; and from a
 * tree, bag or load back to the reels, lots, deliveries, orders and invoices behind what is there. Only questions are
 * answered here; nothing is decided.
 *
 * <p>A lot is known from the delivery. A reel that was slit from a wider one has no delivery of its own: it belongs to
 * the lot of the reel it was made from, through as many slittings as there were. That a place once held something is
 * never forgotten, so a trace tells both what is there and what was.
 *
 * <p>A lot is the supplier's: two suppliers may print the same one. A trace of a lot alone shows what all of them brought
 * and names them, so that people can ask again for one.
 *
 * <p>Start reading at {@link org.bandtrail.supplystock.traces.Traces}.
 */
@NullMarked
package org.bandtrail.supplystock.traces;

import org.jspecify.annotations.NullMarked;
