/**
 * Supply stock: the one ledger of all material, in length, pieces and money. Each package is a feature;
 * {@code published} and {@code received} are the only doors to the other services. Begin with
 * {@code reels}: it is the pattern every other feature follows.
 */
@NullMarked
package org.bandtrail.supplystock;

import org.jspecify.annotations.NullMarked;
