package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;

/**
 * How long to cut the sticky tape for one band.
 *
 * <p>L = g + o + 2 t, rounded up to the crew's tape: g girth, o overlap where the ends meet, t folded tab at each end
 * by which the band is handled and peeled. All in millimetres. Source: common practice of the trade; o and t come
 * from the policy in force. Valid for g above 0, o and t at least 0.
 */
public final class TapeLength {
    private TapeLength() {}

    /**
     * The length to cut.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public static Length of(Length girth, Length overlap, Length tab, TapeMeasure measure) {
        Sizes.positive("girth", girth);
        Sizes.notNegative("overlap", overlap);
        Sizes.notNegative("tab", tab);
        return measure.roundUp(girth.plus(overlap).plus(tab.times(2)));
    }
}
