/**
 * The books as people read them: the trial of a month, every balance and cost at any past moment, and the lines
 * behind each figure. Everything is read from the ledger's sums; single lines are added only for the part of a day.
 *
 * <p>A past moment has two times: when things happened and when the books learnt of them. Both are answered at once, as
 * known then and as known now, so that what was told late shows as the difference. Days are days of UTC.
 */
@NullMarked
package org.bandtrail.supplystock.books;

import org.jspecify.annotations.NullMarked;
