/**
 * Where books and field disagree: one list of open questions, each with its amount in material and money, its age, whom to
 * ask, and likely causes with their evidence. A question names a person, a reel and a day, and blames nobody.
 *
 * <p>It ends by a correcting move with a reason: written off, found, put right at the place where the material really
 * is (on a tree, in a bag, back in a depot after measuring), or set against the other reel that was meant, whose half
 * moves in the same work. Or it waits until a day, with a reason; it comes back earlier if its amount changes.
 *
 * <p>The causes are found by {@code causes}; the moves are decided by the reels and batches themselves.
 */
@NullMarked
package org.bandtrail.supplystock.discrepancies;

import org.jspecify.annotations.NullMarked;
