package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;

/**
 * How far a guard stands off the trunk when its sheet is closed to a round tube.
 *
 * <p>d = (L - s - g) / (2 pi): L length of the sheet, s length lost in the seam, g girth of a round trunk, d stand-off;
 * all in millimetres, d rounded to the nearest. Source: the difference of two radii, r = c / (2 pi). Valid for L and g
 * above 0, s at least 0. A negative stand-off says that the sheet does not close round the trunk.
 */
public final class GuardStandOff {
    private GuardStandOff() {}

    /**
     * The stand-off, negative if the sheet is too short to close.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public static Length of(Length sheet, Length seam, Length girth) {
        Sizes.positive("sheet", sheet);
        Sizes.notNegative("seam", seam);
        Sizes.positive("girth", girth);
        long spare = sheet.mm() - seam.mm() - girth.mm();
        return Length.ofMm(Math.round(spare / (2 * Math.PI)));
    }
}
