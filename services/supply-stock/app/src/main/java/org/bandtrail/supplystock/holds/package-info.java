/**
 * A hold keeps a reel, or some pieces of a batch, for one kit until the kit is packed. It is a promise, not a move: the
 * material stays where it is. One hold aggregate stands beside each reel or batch, so that two kits that want the same
 * reel at the same moment are decided one after the other, whoever asks.
 *
 * <p>Wishes: place, take out. Refused if another kit has it, or if the depot does not. A hold ends when its kit goes
 * out, when it is released, or when its time is over: then the next who asks gets it, and the books say that it lapsed.
 */
@NullMarked
package org.bandtrail.supplystock.holds;

import org.jspecify.annotations.NullMarked;
