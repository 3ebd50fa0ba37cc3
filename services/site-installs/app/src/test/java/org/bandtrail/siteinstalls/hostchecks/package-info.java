/**
 * Tests of host checks. The rule of the verdict is worked out by hand beside each case. The key that comes with the
 * house is checked for what every key must hold.
 */
@NullMarked
package org.bandtrail.siteinstalls.hostchecks;

import org.jspecify.annotations.NullMarked;
