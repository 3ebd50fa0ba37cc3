/**
 * Tests of grants. The rules stand alone without any database. Names and amounts are invented.
 */
@NullMarked
package org.bandtrail.supplystock.grants;

import org.jspecify.annotations.NullMarked;
