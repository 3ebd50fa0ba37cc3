/**
 * Why books and field may disagree: given one balance that does not add up and what the books were told, the finder
 * names likely causes, the likeliest first, each with its evidence in one sentence. It is a pure reckoning over whole
 * millimetres and pieces; it blames nobody and settles nothing.
 *
 * <p>The slips it knows are those of the trade: a fact that is late or still expected, a label misread by one sign, a
 * unit mistaken for another, a fact told twice, tape and mesh taken for each other. How near in time and length two
 * things must be is policy, see {@link org.bandtrail.supplystock.causes.CausePolicy}. When books and field agree there
 * is nothing to explain and the list is empty.
 */
@NullMarked
package org.bandtrail.supplystock.causes;

import org.jspecify.annotations.NullMarked;
