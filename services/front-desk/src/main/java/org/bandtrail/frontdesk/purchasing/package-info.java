/**
 * Pages about buying: suppliers and what they quoted, orders, deliveries received at the counter, and labels. One page
 * takes a whole delivery: a hand scanner fills the numbers, a tape or the label gives the lengths, and what is not as
 * it should be is named when it is stored. Prices, units, findings and states are decided by supply-stock.
 */
@NullMarked
package org.bandtrail.frontdesk.purchasing;

import org.jspecify.annotations.NullMarked;
