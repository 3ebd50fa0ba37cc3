package org.bandtrail.siteinstalls.girths;

import org.bandtrail.kernel.Length;
import org.jspecify.annotations.Nullable;

/**
 * Between which values a girth is believed without asking. The limits are part of a cut-length policy, because they
 * change with pest, host and place.
 *
 * @param minimum the smallest trunk that is banded, for example 479 mm (6 in of diameter)
 * @param questionAbove larger girths are asked about, more than the minimum
 * @param changePermille how far a new measurement may be from the last one, in thousandths of it, 1 to 1000
 */
public record GirthLimits(Length minimum, Length questionAbove, int changePermille) {
    /**
     * Refuses limits nothing fits between.
     *
     * @throws IllegalArgumentException naming the value
     */
    public GirthLimits {
        if (!minimum.isPositive() || questionAbove.compareTo(minimum) <= 0) {
            throw new IllegalArgumentException(
                    "No girth fits between [%s] and [%s]. Give a smallest girth above zero and a larger one."
                            .formatted(minimum, questionAbove));
        }
        if (changePermille < 1 || changePermille > 1000) {
            throw new IllegalArgumentException(
                    "A change of [%d] thousandths cannot be told. Use 1 to 1000.".formatted(changePermille));
        }
    }

    /** Tells whether the girth is believed: near the known one, or between the limits when none is known. */
    public boolean believe(Length girth, @Nullable Length known) {
        return known == null ? within(girth) : near(girth, known);
    }

    /** Tells whether the girth is between the smallest and the largest that need no question. */
    public boolean within(Length girth) {
        return girth.compareTo(minimum) >= 0 && girth.compareTo(questionAbove) <= 0;
    }

    private boolean near(Length girth, Length known) {
        return Math.abs(girth.mm() - known.mm()) * 1000 <= known.mm() * changePermille;
    }
}
