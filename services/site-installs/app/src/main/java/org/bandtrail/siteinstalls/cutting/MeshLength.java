package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;

/**
 * How long to cut the guard mesh for one band.
 *
 * <p>L = g + x, rounded up to the crew's tape: g girth, x the extra that lets the guard stand off the sticky tape. In
 * millimetres. Source: common practice, 152 to 305 mm (6 to 12 in) extra; x comes from the policy in force. Valid for g
 * and x above 0: a guard without extra lies on the tape.
 */
public final class MeshLength {
    private MeshLength() {}

    /**
     * The length to cut.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public static Length of(Length girth, Length extra, TapeMeasure measure) {
        Sizes.positive("girth", girth);
        Sizes.positive("extra", extra);
        return measure.roundUp(girth.plus(extra));
    }
}
