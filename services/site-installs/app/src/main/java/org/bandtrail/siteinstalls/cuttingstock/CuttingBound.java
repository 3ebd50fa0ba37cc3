package org.bandtrail.siteinstalls.cuttingstock;

/**
 * What no plan can do better than. It is computed with whole numbers, so it is true whatever the floating point of the
 * linear program did.
 *
 * @param weighedScrapMm least scrap of any plan that cuts as many pieces, in mm, and with it what the new reels
 *     it opens are worth closed ({@link CuttingRules#openingWorthMm()})
 * @param newReels fewest new reels of any plan that makes no more scrap than this plan
 * @param uncut fewest pieces that any plan leaves uncut, those too long for any reel not counted
 */
public record CuttingBound(long weighedScrapMm, int newReels, int uncut) {}
