/**
 * Cutting stock: which piece comes off which reel, so that least material is wasted. Pure functions of pieces, reels
 * and rules, without time of their own, without chance of their own and without Spring; the way in is
 * {@link org.bandtrail.siteinstalls.cuttingstock.CuttingPlanner}. A plan says with it how good it is: the least scrap
 * any plan could make, and whether this one is proven to make no more. All lengths are whole millimetres.
 *
 * <p>The order in which plans are compared: most pieces cut, least scrap, fewest new reels opened, fewest part reels in
 * the bins afterwards, longest leftovers, and last the reels that expire or were bought first. "Part reels first" is
 * therefore a preference among plans with equally much scrap; a house that would rather make a little scrap than open a
 * new reel says so in {@link org.bandtrail.siteinstalls.cuttingstock.CuttingRules#openingWorthMm()}.
 */
@NullMarked
package org.bandtrail.siteinstalls.cuttingstock;

import org.jspecify.annotations.NullMarked;
