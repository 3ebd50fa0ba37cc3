/**
 * A count is a physical stocktake of one bin or of a whole depot, blind: whoever counts sees which reels are expected, not
 * how much the books have of them. The sheet freezes the book figure at the moment the count was opened; what moves
 * afterwards is not undone, a difference is always against the frozen figure. Nothing is posted before the approval, and
 * the approval posts everything in one work.
 *
 * <p>Wishes, each of which may be refused: open, enter a figure, finish a round, give the reason of a difference,
 * approve, cancel. A difference above the tolerance is counted again, by another person if there is one, until two
 * counts agree or the books are met; from a value on, somebody who did not count has to approve.
 *
 * <p>Start reading at {@link org.bandtrail.supplystock.counts.CountCommand}; the rules are in
 * {@link org.bandtrail.supplystock.counts.Count}, what an approval posts in
 * {@link org.bandtrail.supplystock.counts.Postings}.
 */
@NullMarked
package org.bandtrail.supplystock.counts;

import org.jspecify.annotations.NullMarked;
