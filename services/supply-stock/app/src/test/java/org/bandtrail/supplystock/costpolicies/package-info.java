/**
 * Tests of the cost policy. One year takes one formula, set before anything posts to it, with a reason. The figures
 * of the formulas themselves are checked where they are computed, in the ledger's pool.
 */
@NullMarked
package org.bandtrail.supplystock.costpolicies;

import org.jspecify.annotations.NullMarked;
