/**
 * Tests of the work that bands did. They run on a real database, because the sums are done there. Sites and figures are
 * invented, and each expectation is worked out by hand beside it.
 */
@NullMarked
package org.bandtrail.supplystock.bandwork;

import org.jspecify.annotations.NullMarked;
