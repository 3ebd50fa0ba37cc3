package org.bandtrail.inspections.duebands;

import java.time.Instant;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a band that hangs, as far as the next look depends on it.
 *
 * @param fittedAt when it was fitted, null while nobody has told
 * @param lastReadAt when it was last read or its tape renewed, null if never
 * @param lastVisitAt when somebody last went to look, null if never
 * @param lastAnswer what that visit answered, null if never
 * @param loadPercent saturation left on the tape after the last visit, 0 after a renewal, null if not judged
 * @param guard how the guard was left at the last look at it, null if not known
 * @param bycatchOpen whether an animal waits for its outcome
 */
public record BandStanding(
        @Nullable Instant fittedAt,
        @Nullable Instant lastReadAt,
        @Nullable Instant lastVisitAt,
        @Nullable Answer lastAnswer,
        @Nullable Integer loadPercent,
        @Nullable GuardState guard,
        boolean bycatchOpen) {}
