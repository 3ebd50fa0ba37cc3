package org.bandtrail.supplystock.slittings;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.ReelId;

/**
 * One narrow reel that a slitting makes.
 *
 * @param reelId the label it gets
 * @param material what it is from now on
 * @param width across the strip
 */
public record Strip(ReelId reelId, MaterialCode material, Length width) {}
