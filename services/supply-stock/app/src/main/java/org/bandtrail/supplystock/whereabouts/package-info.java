/**
 * Where is every metre and every piece now? Sums over the balances of all reels and batches: along the trail from
 * supplier to disposal, by place, and by site. Only questions are answered here; nothing is decided.
 *
 * <p>Which tree stands on which site is learnt from the facts themselves, so the answer by site needs no other service.
 */
@NullMarked
package org.bandtrail.supplystock.whereabouts;

import org.jspecify.annotations.NullMarked;
