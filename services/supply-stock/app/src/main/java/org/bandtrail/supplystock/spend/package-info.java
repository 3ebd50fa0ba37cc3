/**
 * What was spent, by site, tree and item, at the actual cost of the reel or batch used. The read model adds up the
 * charges that the events of reels and batches carry; it prices nothing itself. The same events also say how much left
 * stock, and from that the value still in stock is worked out a second way: received = in stock + charged + written off
 * is therefore a check and not a definition. Amounts of two currencies are never added.
 */
@NullMarked
package org.bandtrail.supplystock.spend;

import org.jspecify.annotations.NullMarked;
