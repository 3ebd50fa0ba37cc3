/**
 * The page of what does not add up: each open question with its worth, its age, whom to ask and likely causes with
 * their evidence, and the ways to end it, each a correcting move with a reason. Causes are found by supply-stock;
 * the page puts them in words and offers the move that would put each right. Nobody is blamed.
 */
@NullMarked
package org.bandtrail.frontdesk.discrepancies;

import org.jspecify.annotations.NullMarked;
