/**
 * Who pays for a site: shares of grants in thousandths that add up to 1000, from a month on. The shares of a month are
 * the latest that begin in it or before; an empty list means that no grant pays. Wish: set the shares from a month,
 * refused if they do not add up, name a grant twice, or would change a closed month. Amounts are split by largest
 * remainder, so the parts always add up to the whole; shares run by the month because the books post by the month.
 */
@NullMarked
package org.bandtrail.supplystock.siteshares;

import org.jspecify.annotations.NullMarked;
