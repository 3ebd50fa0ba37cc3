/**
 * Pieces of guard mesh that are used again, each with an identity and a wear of its own. A piece begins when mesh comes
 * off a tree and goes back to a person, as inspections tells, or when somebody writes one down that was found; it is
 * graded, put into a depot or given to a person, fitted on another band, and taken back again under the same identity.
 *
 * <p>The books of material stay with supply-stock and know reels, not pieces: mesh that comes back is a length of its
 * reel moved from the tree to the person, and a band fitted from a piece moves the same length of the same reel from
 * the person to the tree. So nothing is counted twice, and the identity of a piece lives here alone; carrying it
 * through supply-stock would make every piece a reel of its own, received without a purchase, which breaks the law
 * that all material has come in once. Where a piece lies is what people say here; the length in somebody's hands
 * changes hands in supply-stock by handout and return as ever. A piece graded as scrap still has to go into a waste
 * bag, which is told to inspections.
 *
 * <p>All entries about a piece that exists are facts and are accepted in any order; of each kind the one that happened
 * last counts. Only an entry about a piece nobody knows is refused.
 */
@NullMarked
package org.bandtrail.siteinstalls.meshpieces;

import org.jspecify.annotations.NullMarked;
