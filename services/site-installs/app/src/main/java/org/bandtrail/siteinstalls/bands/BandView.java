package org.bandtrail.siteinstalls.bands;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One band as people see it; lengths in millimetres. What only the fitting tells is null until it arrives.
 *
 * @param bandId the band
 * @param treeId the tree
 * @param siteId the site
 * @param state up or down
 * @param fittedAt last fitting
 * @param takenDownAt last teardown, null if never
 * @param crewId the crew that fitted it
 * @param personId who fitted it
 * @param tapeReelId reel of the tape that hangs or hung there last
 * @param tapeMm its length
 * @param meshReelId reel of the guard, null for none
 * @param meshMm its length
 * @param fastenerBatchId batch of the fasteners
 * @param pieces how many
 * @param girthMm of the trunk
 * @param heightMm above ground
 * @param mustRemoveBy the day by which it must be off
 * @param policyVersion cut-length policy of the fitting
 * @param flags what contradicted the books
 */
public record BandView(
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        String state,
        @Nullable Instant fittedAt,
        @Nullable Instant takenDownAt,
        @Nullable String crewId,
        @Nullable String personId,
        @Nullable String tapeReelId,
        @Nullable Long tapeMm,
        @Nullable String meshReelId,
        @Nullable Long meshMm,
        @Nullable String fastenerBatchId,
        @Nullable Long pieces,
        @Nullable Long girthMm,
        @Nullable Long heightMm,
        @Nullable LocalDate mustRemoveBy,
        @Nullable Integer policyVersion,
        List<Flag> flags) {

    /** The same band with these flags. */
    BandView with(List<Flag> found) {
        return new BandView(
                bandId,
                treeId,
                siteId,
                state,
                fittedAt,
                takenDownAt,
                crewId,
                personId,
                tapeReelId,
                tapeMm,
                meshReelId,
                meshMm,
                fastenerBatchId,
                pieces,
                girthMm,
                heightMm,
                mustRemoveBy,
                policyVersion,
                List.copyOf(found));
    }

    /**
     * One flag.
     *
     * @param flag the code of a {@link BandFlag}
     * @param field the field of the request it is about
     * @param message for people
     */
    public record Flag(String flag, String field, String message) {
        static Flag of(Finding finding) {
            return new Flag(finding.code(), finding.field(), finding.message());
        }
    }

    /**
     * One thing that happened to a band.
     *
     * @param what in words
     * @param happenedAt when
     * @param recordedAt when the books learnt of it
     * @param by who
     * @param note details
     */
    public record Step(String what, Instant happenedAt, Instant recordedAt, String by, String note) {}

    /**
     * A band with its history, newest first, as one flat object.
     *
     * @param band the band
     * @param history what happened to it
     */
    public record Whole(@JsonUnwrapped BandView band, List<Step> history) {}
}
