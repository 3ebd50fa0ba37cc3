/**
 * The counter: handing out kits, taking back what is left, and sending waste bags to disposal. A return is measured
 * before the figure of the books is shown, so that nobody measures what is expected. What does not add up becomes a
 * discrepancy of supply-stock and is shown with the person and the day.
 */
@NullMarked
package org.bandtrail.frontdesk.handouts;

import org.jspecify.annotations.NullMarked;
