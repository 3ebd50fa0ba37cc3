/**
 * Tests of {@code landedcosts}. Splits are checked against hand-computed examples and over random deliveries; the rules
 * by given, when and then. The way over HTTP is tested with the invoices.
 */
@NullMarked
package org.bandtrail.supplystock.landedcosts;

import org.jspecify.annotations.NullMarked;
