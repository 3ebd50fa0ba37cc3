/**
 * Tests of pieces of mesh: the rules alone, and on PostgreSQL with the messages of inspections. Facts come in every
 * order, and the piece must be the same after each. What comes off a tree twice is one piece.
 */
@NullMarked
package org.bandtrail.siteinstalls.meshpieces;

import org.jspecify.annotations.NullMarked;
