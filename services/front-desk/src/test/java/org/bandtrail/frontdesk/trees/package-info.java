/**
 * Tests of the tree pages. A tree list comes from anybody's spreadsheet, so its letters and its separators differ. What
 * is read here must be what the person sees in the spreadsheet.
 */
@NullMarked
package org.bandtrail.frontdesk.trees;

import org.jspecify.annotations.NullMarked;
