/**
 * Tests of duplicates: distances against known geodesics, pairs found among trees on PostgreSQL, and what becomes of a
 * tree that is merged into another or is said to be its own. Pairs close to the threshold, at the date line and under
 * an unread tag are among them. A register laid out by formula is searched twice, by the grid and by comparing every
 * tree with every other, which must find the same.
 */
@NullMarked
package org.bandtrail.siteinstalls.duplicates;

import org.jspecify.annotations.NullMarked;
