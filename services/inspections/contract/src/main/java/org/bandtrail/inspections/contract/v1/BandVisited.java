package org.bandtrail.inspections.contract.v1;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Somebody went to look at a band. Four answers are four different things: {@code read} (looked at and counted; an
 * empty count is a true zero), {@code not-found} (the tree or band was not found), {@code not-read} (found but not
 * counted), {@code band-missing} (the tree is there, the band is not).
 *
 * @param visitId names the visit for ever
 * @param bandId the band
 * @param treeId the tree, null while inspections has not heard where the band hangs
 * @param siteId the site, null likewise
 * @param crewId the crew, null if not written down
 * @param personId who looked
 * @param answer {@code read}, {@code not-found}, {@code not-read} or {@code band-missing}
 * @param saturationPercent how much of the surface was covered, 0 to 100, null if not judged
 * @param catchIsLowerBound true if the band was too full to catch on: the true number is at least the count
 * @param catches insects by life stage: {@code egg-mass}, {@code instar-1} to {@code instar-4}, {@code adult}
 * @param bycatch another animal, null if the question was not answered
 * @param guardState {@code sound}, {@code touching}, {@code gap} or {@code missing}, null if not looked at
 * @param happenedAt when it was done, as the device says
 * @param recordedAt when inspections learnt of it
 * @param by who told it
 */
public record BandVisited(
        String visitId,
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        @Nullable String crewId,
        String personId,
        String answer,
        @Nullable Integer saturationPercent,
        boolean catchIsLowerBound,
        Map<String, Long> catches,
        @Nullable Bycatch bycatch,
        @Nullable String guardState,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The name in the envelope. */
    public static final String TYPE = "inspections.band-visited.v1";

    public BandVisited {
        catches = Map.copyOf(catches);
    }

    /** What the event is about: the band. Order is kept per subject. */
    public String subject() {
        return "band/" + bandId;
    }
}
