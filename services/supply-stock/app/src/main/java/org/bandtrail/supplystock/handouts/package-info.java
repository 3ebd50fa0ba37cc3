/**
 * A kit is what one person carries out of a depot in one handout: whole reels and pieces of batches. Handing out is a
 * wish: if one line cannot be given, nothing is. Bringing back is a fact, measured and counted; what does not add up is
 * missing under the person's name, and the answer says so line by line.
 *
 * <p>The reels and batches keep the balances; the kit keeps who carried what together, and why.
 */
@NullMarked
package org.bandtrail.supplystock.handouts;

import org.jspecify.annotations.NullMarked;
