package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;

/**
 * How many pins or tacks one band takes.
 *
 * <p>n = max(m, ceil(g / a)): g girth and a spacing in millimetres, m the fewest that hold any band. No published count
 * or spacing is known; both values are a rule of the house in the policy, and what crews really use is recorded. Valid
 * for g and a above 0, m at least 1.
 */
public final class FastenerCount {
    private FastenerCount() {}

    /**
     * The count.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public static Pieces of(Length girth, Length spacing, Pieces minimum) {
        Sizes.positive("girth", girth);
        Sizes.positive("spacing", spacing);
        if (!minimum.isPositive()) {
            throw new IllegalArgumentException("The minimum [%s] holds no band. Use 1 or more.".formatted(minimum));
        }
        Pieces bySpacing = Pieces.of(Math.ceilDiv(girth.mm(), spacing.mm()));
        return bySpacing.compareTo(minimum) > 0 ? bySpacing : minimum;
    }
}
