/**
 * Tests of cutting. Hand-calculated values stand beside their calculation. Laws hold for a whole range of girths, not
 * for one.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutting;

import org.jspecify.annotations.NullMarked;
