/**
 * Stock is moved about within the books: the one component that turns "this reel, from there to here" into commands for
 * reels and batches, inside the caller's work. It finds out where a reel or batch lies in a depot when nobody says so,
 * because a person at a shelf knows the label in his hand and not the bin in the books. It decides nothing: what may move
 * where is in {@code holdings}.
 */
@NullMarked
package org.bandtrail.supplystock.relocations;

import org.jspecify.annotations.NullMarked;
