/**
 * Making a work plan: from a list of trees to the pieces they take, refused where a tree is gone or not measured or
 * where no consent holds, and reviewed at once: does the depot's stock suffice, is one reel long enough for the longest
 * piece, has the crew the hours, do the days suit. What only deserves a thought is a warning and stops nobody. The
 * order of the walk can be suggested; it is a suggestion and the crew knows the gates.
 */
@NullMarked
package org.bandtrail.siteinstalls.planmaking;

import org.jspecify.annotations.NullMarked;
