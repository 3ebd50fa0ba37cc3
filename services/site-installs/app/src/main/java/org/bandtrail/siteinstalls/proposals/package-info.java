/**
 * Proposals: what to cut and to carry for a trunk of a given girth, by the cut-length policy in force on a day. A
 * proposal is a calculation, not a fact; nothing is stored. It shows its formula with its numbers, so that a crew can
 * check it with a pencil, and the cautions that belong to the work.
 */
@NullMarked
package org.bandtrail.siteinstalls.proposals;

import org.jspecify.annotations.NullMarked;
