/**
 * A batch is one delivery of fasteners (pins, tacks, staples), counted in pieces. The law is that of reels: what was
 * received is what lies in depots, with crews, on trees, in waste bags, disposed, written off or missing, in pieces and
 * in money.
 *
 * <p>Unlike a reel a batch is shared out: a kit takes some of its pieces, oldest batch first (IAS 2, paragraph 27).
 * Everything else follows {@code reels}; all rules are in {@link org.bandtrail.supplystock.batches.Batch}.
 */
@NullMarked
package org.bandtrail.supplystock.batches;

import org.jspecify.annotations.NullMarked;
