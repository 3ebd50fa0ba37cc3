/**
 * Maps: what stands in a box of the earth, for a drawing: sites with their boundary or point, and trees by what hangs
 * on them. Up to a few hundred trees are given one by one; more are gathered on a grid by the database, so that an
 * answer stays small however large the register is. It only reads, and reads the tables of other features.
 */
@NullMarked
package org.bandtrail.siteinstalls.maps;

import org.jspecify.annotations.NullMarked;
