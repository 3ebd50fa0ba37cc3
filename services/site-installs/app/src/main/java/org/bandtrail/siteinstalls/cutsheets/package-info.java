/**
 * Cut sheets: a cut plan on paper. The sheet goes along in the order of the crew's walk and shows every reel as a bar
 * to scale; the labels are one for each piece of tape, to be tied to the roll of pieces for a tree. Lengths are written
 * as the crew's measuring tape shows them. Nothing is decided or kept here.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutsheets;

import org.jspecify.annotations.NullMarked;
