/**
 * Checks of the cutting planner: examples of the literature to their known optimum, laws over random jobs, and every
 * tiny job against an oracle that tries all plans there are. No check is timed: patience is endless, or its clock is a
 * counter. Files of the classic instances stand in {@code src/test/resources/cutting}, with their licence.
 */
@NullMarked
package org.bandtrail.siteinstalls.cuttingstock;

import org.jspecify.annotations.NullMarked;
