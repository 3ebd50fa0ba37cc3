/**
 * Tests of budgets. The rules stand alone without any database. Names and amounts are invented.
 */
@NullMarked
package org.bandtrail.supplystock.budgets;

import org.jspecify.annotations.NullMarked;
