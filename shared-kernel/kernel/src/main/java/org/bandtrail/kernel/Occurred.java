package org.bandtrail.kernel;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The two times of a fact: when it happened in the field and when the books learnt of it. Both are given, never made
 * here, so that a history can be replayed. A fact may be recorded before it "happened" when a telephone's clock is
 * wrong; that is kept, not mended.
 *
 * @param happened when it was done, as the person or device says
 * @param recorded when the service that keeps the fact received it
 */
public record Occurred(Instant happened, Instant recorded) {

    /**
     * Refuses a fact without its times, which a request may lack.
     *
     * @throws IllegalArgumentException naming the time that is missing
     */
    public Occurred {
        given("happened", happened);
        given("was recorded", recorded);
    }

    private static void given(String what, @Nullable Instant moment) {
        if (moment == null) {
            throw new IllegalArgumentException(
                    "The time it %s is missing. Give it as 2026-05-04T07:30:00Z.".formatted(what));
        }
    }

    /** A fact written down as it happens. */
    public static Occurred at(Instant moment) {
        return new Occurred(moment, moment);
    }

    /** How long the books were behind; negative if the device's clock ran ahead. */
    public Duration delay() {
        return Duration.between(happened, recorded);
    }
}
