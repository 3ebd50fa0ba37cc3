/**
 * Tests of who pays for a site. The rules stand alone without any database. Names and amounts are invented.
 */
@NullMarked
package org.bandtrail.supplystock.siteshares;

import org.jspecify.annotations.NullMarked;
