/**
 * Cutting stock: which piece comes off which reel, so that least material is lost. Pure functions of pieces, reels and
 * rules, without time of their own, without chance of their own and without Spring; the way in is
 * {@link org.bandtrail.siteinstalls.cuttingstock.CuttingPlanner}. A plan says with it how good it is: the least
 * material any plan could lose, and whether this one is proven to lose no more. All lengths are whole millimetres.
 *
 * <p>The order in which plans are compared: most pieces cut, least material lost (scrap and blade), fewest new reels
 * opened, fewest part reels in the bins afterwards, longest leftovers, and last the reels that expire or were bought
 * first. "Part reels first" is therefore a preference among plans that lose equally much; a house that would rather
 * lose a little than open a new reel says so in
 * {@link org.bandtrail.siteinstalls.cuttingstock.CuttingRules#openingWorthMm()}.
 */
@NullMarked
package org.bandtrail.siteinstalls.cuttingstock;

import org.jspecify.annotations.NullMarked;
