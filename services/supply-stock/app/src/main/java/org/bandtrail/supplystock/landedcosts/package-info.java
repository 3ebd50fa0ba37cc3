/**
 * Freight and duty belong to the cost of the goods they brought (IAS 2 Inventories, paragraphs 10 and 11). A landed
 * cost spreads one amount over the lines of one or more deliveries by value, length or number of reels and batches, and
 * within a line by quantity, each time by largest remainder, so that the shares add up to the amount. Each share
 * changes the cost of its reel or batch.
 *
 * <p>Wishes: spread an amount, of an invoice or by hand; take a spreading back with a reason, which is a further change
 * of cost and deletes nothing.
 */
@NullMarked
package org.bandtrail.supplystock.landedcosts;

import org.jspecify.annotations.NullMarked;
