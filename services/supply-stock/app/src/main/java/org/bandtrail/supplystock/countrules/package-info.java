/**
 * How the programme counts its stock: how far a count may be off before somebody counts again, from which value on a second
 * person approves, which items are counted often and which seldom. All of it is data with a source and a reason, kept
 * for ever; what holds when nobody has set anything stands in the table of defaults.
 *
 * <p>Wishes: set the rules. Refused without source and reason, or with figures that cannot be meant. A count keeps the
 * rules under which it was opened.
 */
@NullMarked
package org.bandtrail.supplystock.countrules;

import org.jspecify.annotations.NullMarked;
