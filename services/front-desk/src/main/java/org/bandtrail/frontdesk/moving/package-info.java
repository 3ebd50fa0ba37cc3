/**
 * Pages of stock that depots move about: transfers with both ends confirmed, shelves and vehicles, what stands
 * aside, and wide reels slit into narrow ones. The pages read labels from a hand scanner: a scanned number and Enter
 * is one line. They show and pass on; what may move where is decided by supply-stock.
 */
@NullMarked
package org.bandtrail.frontdesk.moving;

import org.jspecify.annotations.NullMarked;
