package org.bandtrail.inspections.sightings;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What was seen on one visit.
 *
 * @param answer whether the band was read
 * @param saturationPercent how much of the surface was covered, 0 to 100, null if not judged
 * @param catches insects by life stage, each 0 or more; empty on a read band is a true zero
 * @param guard how the guard was found, null if not looked at
 * @param bycatch another animal, null if the question was not answered
 */
public record Look(
        Answer answer,
        @Nullable Integer saturationPercent,
        Map<LifeStage, Long> catches,
        @Nullable GuardState guard,
        @Nullable Bycatch bycatch) {
    public Look {
        catches = Collections.unmodifiableMap(new TreeMap<>(catches));
        if (saturationPercent != null && (saturationPercent < 0 || saturationPercent > 100)) {
            throw new IllegalArgumentException(
                    "Saturation [%d] is not between 0 and 100 percent.".formatted(saturationPercent));
        }
        catches.forEach((stage, count) -> {
            if (count < 0 || count > 1_000_000) {
                throw new IllegalArgumentException("Catch [%d] of %s is not between 0 and 1,000,000. Check the number."
                        .formatted(count, stage.spelt()));
            }
        });
    }

    /** All insects counted, of every stage. */
    public long catchTotal() {
        return catches.values().stream().mapToLong(Long::longValue).sum();
    }

    /** Tells whether insects were counted although the answer says that the band was not read. */
    public boolean contradictsItself() {
        return answer != Answer.READ && catchTotal() > 0;
    }

    /**
     * Tells whether the count is only a lower bound because the surface was too full to catch on.
     *
     * @param fullFromPercent saturation from which the policy in force calls a band full
     */
    public boolean lowerBound(int fullFromPercent) {
        return answer == Answer.READ && saturationPercent != null && saturationPercent >= fullFromPercent;
    }
}
