/**
 * Tests of the months of the books. The rules stand alone; the order of closing is tried over random histories; the way
 * over HTTP runs on a real database. Dates are invented.
 */
@NullMarked
package org.bandtrail.supplystock.periods;

import org.jspecify.annotations.NullMarked;
