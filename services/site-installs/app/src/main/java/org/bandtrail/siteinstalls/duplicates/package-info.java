/**
 * Duplicates: one trunk that stands in the register twice. Pairs are found by the same tag at a site and by places so
 * close together that they are one, with girths that agree; how close and how alike is data with its source. Whoever
 * knows says "the same tree", and one of the two is merged into the other without losing anything, or "not the same",
 * and the pair does not come again; both can be taken back. Facts told for a merged tree are kept as before and shown
 * at the tree that stays; only plans refuse a merged tree and name the one to plan instead.
 */
@NullMarked
package org.bandtrail.siteinstalls.duplicates;

import org.jspecify.annotations.NullMarked;
