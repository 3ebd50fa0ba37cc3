/**
 * Slitting cuts a wide reel lengthwise into narrower ones: one reel in, strips and an edge trim out, all of the same length.
 * Laws: length times width in = length times widths out, trim included, and the cost of the wide length is the cost of the
 * strips, split by width by largest remainder; the trim is a normal loss and its cost is carried by the strips (IAS 2
 * paragraphs 10 to 12). Wish: slit. Refused if the widths do not add up or the depot does not have the length.
 */
@NullMarked
package org.bandtrail.supplystock.slittings;

import org.jspecify.annotations.NullMarked;
