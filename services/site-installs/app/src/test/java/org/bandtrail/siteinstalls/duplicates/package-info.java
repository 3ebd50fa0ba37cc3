/**
 * Tests of duplicates: distances against known geodesics, pairs found among trees on PostgreSQL, and what becomes of a
 * tree that is merged into another or is said to be its own. Pairs close to the threshold, at the date line and under
 * a tag without letters or digits are among them. Places and trees are invented.
 */
@NullMarked
package org.bandtrail.siteinstalls.duplicates;

import org.jspecify.annotations.NullMarked;
