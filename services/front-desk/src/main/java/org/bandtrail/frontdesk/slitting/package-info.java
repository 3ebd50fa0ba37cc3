/**
 * Pages about cutting a wide reel lengthwise into narrow ones. The plan is drawn to scale before anything is cut:
 * strips side by side as wide as their items, and the edge trim that is left over; length and area follow from the
 * widths. Whether it may be done, and what each strip costs, is decided by supply-stock.
 */
@NullMarked
package org.bandtrail.frontdesk.slitting;

import org.jspecify.annotations.NullMarked;
