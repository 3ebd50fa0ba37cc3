package org.bandtrail.siteinstalls.cuttingstock;

/**
 * What no plan can do better than. It is computed with whole numbers, so it is true whatever the floating point of the
 * linear program did.
 *
 * @param weighedLossMm least that scrap and blade take together in any plan that cuts as many pieces, in mm; with it what
 *     the new reels opened are worth closed ({@link CuttingRules#openingWorthMm()})
 * @param newReels fewest new reels of any plan that loses no more than this plan
 * @param uncut fewest pieces that any plan leaves uncut, those too long for any reel not counted
 */
public record CuttingBound(long weighedLossMm, int newReels, int uncut) {}
