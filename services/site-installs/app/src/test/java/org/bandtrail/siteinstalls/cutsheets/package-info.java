/**
 * Tests of cut plans on paper: what a person reads on the sheet and on the labels, in both unit systems. The file is
 * read back with the library's own text reader. Layout is looked at, not tested.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutsheets;

import org.jspecify.annotations.NullMarked;
