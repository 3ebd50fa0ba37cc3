package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;

/**
 * What a plan needs of one material.
 *
 * @param material the supply item
 * @param kind what it is
 * @param quantity millimetres of tape or mesh without waste, pieces of fasteners
 * @param longest the longest piece in millimetres, which one reel must have whole; 0 for fasteners
 * @param pieces how many pieces are cut, or how many fasteners
 */
public record PlanNeed(MaterialCode material, MaterialKind kind, long quantity, long longest, long pieces) {}
