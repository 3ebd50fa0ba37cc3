package org.bandtrail.inspections.duebands;

import java.time.Instant;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.GuardState;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one band, without what depends on a policy.
 *
 * @param bandId the band
 * @param treeId the tree, null while no fitting is known
 * @param siteId the site, null while no fitting is known
 * @param fittedAt latest fitting
 * @param downAt latest teardown
 * @param lastVisitAt last time somebody went to look
 * @param lastAnswer what that answered
 * @param lastReadAt last reading, or renewal of the tape
 * @param saturationPercent how full the tape was found when last judged, 0 if it was renewed then
 * @param guard how the guard was left
 * @param visits how many visits there were
 * @param catchTotal insects counted on all readings
 * @param catchIsLowerBound true if one of these was on a full band
 * @param bycatchOpen whether an animal waits for its outcome
 * @param tapeReelId reel of the tape that hangs
 * @param tapeMm tape that hangs, millimetres
 * @param meshReelId reel of the mesh that hangs
 * @param meshMm mesh that hangs, millimetres
 * @param pieces fasteners that hang
 */
public record BandRow(
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        @Nullable Instant fittedAt,
        @Nullable Instant downAt,
        @Nullable Instant lastVisitAt,
        @Nullable Answer lastAnswer,
        @Nullable Instant lastReadAt,
        @Nullable Integer saturationPercent,
        @Nullable GuardState guard,
        long visits,
        long catchTotal,
        boolean catchIsLowerBound,
        boolean bycatchOpen,
        @Nullable String tapeReelId,
        long tapeMm,
        @Nullable String meshReelId,
        long meshMm,
        long pieces) {

    /** {@code up}, {@code down}, or {@code not-known-yet} while nobody has told that it was fitted. */
    public String state() {
        if (downAt != null && (fittedAt == null || !downAt.isBefore(fittedAt))) {
            return "down";
        }
        return fittedAt == null ? "not-known-yet" : "up";
    }

    /** What the next look depends on. */
    BandStanding standing() {
        return new BandStanding(fittedAt, lastReadAt, lastVisitAt, lastAnswer, saturationPercent, guard, bycatchOpen);
    }
}
