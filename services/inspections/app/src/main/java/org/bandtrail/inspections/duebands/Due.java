package org.bandtrail.inspections.duebands;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;

/**
 * When the next look at a band is due: the earliest of all reasons that apply.
 *
 * @param at the moment
 * @param reason why then
 * @param sentence the reason with its numbers, for people
 */
public record Due(Instant at, DueReason reason, String sentence) {

    /** The next look, or null if nothing at all is known of the band's time. */
    public static @Nullable Due of(BandStanding band, VisitPolicy policy) {
        return reasons(band, policy).stream()
                .min(Comparator.comparing(Due::at).thenComparing(Due::reason))
                .orElse(null);
    }

    /** The day by which the band must come off, or null while nobody has told when it was fitted. */
    public static @Nullable Instant mustRemoveBy(BandStanding band, VisitPolicy policy) {
        Instant fitted = band.fittedAt();
        return fitted == null ? null : fitted.plus(policy.maxDaysUp(), ChronoUnit.DAYS);
    }

    /** All reasons that apply, in the order in which they are named. */
    static List<Due> reasons(BandStanding band, VisitPolicy policy) {
        List<Due> reasons = new ArrayList<>();
        Instant last = band.lastVisitAt();
        if (last != null) {
            sinceLastVisit(band, policy, last, reasons);
        }
        Instant off = mustRemoveBy(band, policy);
        if (off != null) {
            reasons.add(new Due(
                    off,
                    DueReason.MUST_REMOVE,
                    "It has to come off %d days after it was fitted.".formatted(policy.maxDaysUp())));
        }
        Instant read = latest(band.lastReadAt(), band.fittedAt());
        if (read != null) {
            reasons.add(after(
                    read,
                    policy.intervalDays(),
                    DueReason.INTERVAL,
                    "A band is read at least every %d days.".formatted(policy.intervalDays())));
        }
        return reasons;
    }

    private static void sinceLastVisit(BandStanding band, VisitPolicy policy, Instant last, List<Due> reasons) {
        if (band.bycatchOpen()) {
            reasons.add(new Due(last, DueReason.BYCATCH, "An animal was found and nobody has told what became of it."));
        }
        GuardState guard = band.guard();
        if (guard != null && guard.failed()) {
            reasons.add(after(
                    last,
                    policy.guardIntervalDays(),
                    DueReason.GUARD,
                    "The guard was found %s; wildlife can reach the tape.".formatted(found(guard))));
        }
        if (band.lastAnswer() != null && band.lastAnswer() != Answer.READ) {
            reasons.add(after(
                    last,
                    policy.retryIntervalDays(),
                    DueReason.NOT_READ,
                    "The last look answered %s.".formatted(band.lastAnswer().spelt())));
        }
        Integer load = band.loadPercent();
        if (load != null && load >= policy.loadFromPercent()) {
            reasons.add(after(
                    last,
                    policy.loadIntervalDays(),
                    DueReason.LOAD,
                    "%d percent was covered at the last look; from %d percent it is looked at sooner."
                            .formatted(load, policy.loadFromPercent())));
        }
    }

    private static String found(GuardState guard) {
        return switch (guard) {
            case SOUND -> "sound";
            case TOUCHING -> "touching the tape";
            case GAP -> "with a gap";
            case MISSING -> "gone";
        };
    }

    private static Due after(Instant start, int days, DueReason reason, String sentence) {
        return new Due(start.plus(Duration.ofDays(days)), reason, sentence);
    }

    private static @Nullable Instant latest(@Nullable Instant one, @Nullable Instant other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.isAfter(other) ? one : other;
    }
}
