/**
 * Trees: the register of trunks, each with its tag, its site, perhaps its species, and every girth ever measured with
 * its date. {@code RegisterTree} is refused when the identity is taken; {@code MeasureGirth} when the tree is not
 * registered. {@code CorrectTree} is refused when nothing changes or no reason is given; both values stay in the
 * history. {@code NoteGone} and {@code NoteFoundAgain} say that a tree is no more, and that it stands after all. A
 * measurement is never overwritten: the one that happened last is the girth, whatever order they came in. Two tags on
 * one trunk and two trees with one tag at a site are what a register must not have, so tag and site make the identity
 * unless one is given.
 */
@NullMarked
package org.bandtrail.siteinstalls.trees;

import org.jspecify.annotations.NullMarked;
