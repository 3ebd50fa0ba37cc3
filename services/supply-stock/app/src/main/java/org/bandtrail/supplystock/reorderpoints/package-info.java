/**
 * Reorder points per item and depot, derived from events alone. Use is what crews fitted or spoilt; it counts for the
 * depot that had handed out the reel or batch. Mean and spread of the daily use, the supplier's lead time and the
 * wanted service level go into the functions of {@link org.bandtrail.supplystock.reordering}; every input, the formula
 * and its source stand in the answer, so that a person can follow it with a pocket calculator. Where too little was
 * observed the answer says so instead of a number.
 */
@NullMarked
package org.bandtrail.supplystock.reorderpoints;

import org.jspecify.annotations.NullMarked;
