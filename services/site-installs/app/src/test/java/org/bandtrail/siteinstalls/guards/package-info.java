/**
 * Tests of guards. The figures are worked out by hand and the working stands beside them. Each rule is tried at its
 * limit and one millimetre beyond it.
 */
@NullMarked
package org.bandtrail.siteinstalls.guards;

import org.jspecify.annotations.NullMarked;
