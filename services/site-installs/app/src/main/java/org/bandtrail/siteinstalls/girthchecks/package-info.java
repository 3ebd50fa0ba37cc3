/**
 * Questions before a girth is stored: is it far from the one measured before on this tree, is it larger than the
 * largest trunk known of its kind, is it a slip of units? Nothing is stored and nothing is refused here; whoever holds
 * the tape answers. The limits come from the cut-length policy of the day, the largest trunks from the book of species.
 */
@NullMarked
package org.bandtrail.siteinstalls.girthchecks;

import org.jspecify.annotations.NullMarked;
