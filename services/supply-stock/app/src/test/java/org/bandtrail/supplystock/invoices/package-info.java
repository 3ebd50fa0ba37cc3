/**
 * Tests of {@code invoices}. Rules are tested by given, when and then without any framework; sums to pay are checked
 * against figures computed by hand. A refusal stands beside each success, at the boundary.
 */
@NullMarked
package org.bandtrail.supplystock.invoices;

import org.jspecify.annotations.NullMarked;
