/**
 * Where the pieces of one band are, as a pure function of what was done to it. A piece of tape or mesh or a handful of
 * fasteners goes up, hangs, and is taken off to a bag or back to a person; facts come late and out of order, so the
 * places are always worked out anew from all facts in the order in which they happened. A fact that arrives yields the
 * moves from where the books had each piece to where it must have been, so that every order of arrival ends the same.
 */
@NullMarked
package org.bandtrail.inspections.pieces;

import org.jspecify.annotations.NullMarked;
