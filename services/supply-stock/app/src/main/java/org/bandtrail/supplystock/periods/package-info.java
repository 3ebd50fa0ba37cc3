/**
 * Months of the books, open or closed. Wishes: sign a check that is not clean, close a month, ask to reopen it, reopen it,
 * drop the request. Closing keeps order: the first close takes everything before its month with it, every further one
 * takes the month after the last, and never a month that has not ended. All checks of a close are clean or signed by a
 * person with a reason. Reopening takes the last closed month only, needs a reason, and a second person grants it.
 *
 * <p>A month is a month of UTC, like every day in the books of this service. A field fact that is heard after its month
 * was closed is never refused: it posts to the earliest open month and keeps its own date, see
 * {@link org.bandtrail.supplystock.periods.Period#postsTo}.
 */
@NullMarked
package org.bandtrail.supplystock.periods;

import org.jspecify.annotations.NullMarked;
