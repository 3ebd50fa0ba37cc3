/**
 * Tests of hazards: every kind in the file has words for people. A kind that nobody knows is refused with those
 * there are. A kind that was taken out can still be shown.
 */
@NullMarked
package org.bandtrail.siteinstalls.hazards;

import org.jspecify.annotations.NullMarked;
