/**
 * How much a band catches in a day, with honest uncertainty. A rate is insects per band-day over bands that were read;
 * bands not found, not read or missing leave numerator and denominator alike, and a count on a full band makes the rate
 * a lower bound. The interval is Garwood's exact one for a Poisson count, so it is too narrow where bands differ much.
 */
@NullMarked
package org.bandtrail.inspections.catchrates;

import org.jspecify.annotations.NullMarked;
