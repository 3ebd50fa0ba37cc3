/**
 * A kit's whole life at the counter: a tree list becomes needs, stock is chosen and reserved, the pick sheet tells
 * which reel from which bin and what is cut of it, the kit goes out all or nothing, the person signs with their own
 * sign-in, and it is settled when nothing of it is out any more.
 *
 * <p>A reservation is a wish: refused if another kit has a reel or the depot has it not. It lapses by itself, or is
 * released. The rules are in {@code handouts.Kit} and {@code holds.Hold}; here they are brought together and shown.
 */
@NullMarked
package org.bandtrail.supplystock.kits;

import org.jspecify.annotations.NullMarked;
