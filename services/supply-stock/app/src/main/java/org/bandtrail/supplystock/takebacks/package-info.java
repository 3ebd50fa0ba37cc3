/**
 * Taking back the move just made: whoever put the wrong reel into a bin, set it aside or loaded it by mistake brings it
 * back with one press. Nothing is deleted: the opposite move is made, from where it went to where it came from, as a move
 * of its own. It is granted for a few minutes and only as long as nothing else moved the same reel or batch, because after
 * that the opposite move would undo somebody else's work.
 */
@NullMarked
package org.bandtrail.supplystock.takebacks;

import org.jspecify.annotations.NullMarked;
