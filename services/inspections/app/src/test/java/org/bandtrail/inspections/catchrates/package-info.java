/**
 * Tests of the catch rates. Expected figures are published or computed by another program. The source stands beside
 * each check.
 */
@NullMarked
package org.bandtrail.inspections.catchrates;

import org.jspecify.annotations.NullMarked;
