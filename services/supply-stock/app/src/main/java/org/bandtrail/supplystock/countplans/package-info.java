/**
 * What to count when: items are put into three value classes, and each class has its interval, so that the few items that
 * make up most of the value are counted often and the many small ones seldom. The plan lists every place and item in
 * stock with when it was last counted and when it is due.
 *
 * <p>The classes are a pure reckoning, {@link org.bandtrail.supplystock.countplans.ValueClasses}; shares, intervals and
 * what the value is reckoned from are data, see {@code countrules}. Nothing is stored here: the plan is read from what
 * was used, what lies in stock and which counts were approved.
 */
@NullMarked
package org.bandtrail.supplystock.countplans;

import org.jspecify.annotations.NullMarked;
