/**
 * Tests of slitting: the rule that widths add up, the split of the cost, and over HTTP on PostgreSQL that one wide reel goes in
 * and strips come out with the same length, the same area and the same cost. A cost that changes after the slitting follows
 * to the strips. Source of the cost rule: IAS 2 paragraphs 10 to 12.
 */
@NullMarked
package org.bandtrail.supplystock.slittings;

import org.jspecify.annotations.NullMarked;
