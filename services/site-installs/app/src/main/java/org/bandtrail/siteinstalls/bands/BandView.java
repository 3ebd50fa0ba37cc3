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
 * @param details which device, where on the trunk, what else was used; null before the fitting arrives
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
        @JsonUnwrapped @Nullable Details details,
        List<Flag> flags) {

    /**
     * How the device was fitted beyond its first three pieces.
     *
     * @param device code of the kind of device
     * @param position which one on the trunk, 1 is the lowest
     * @param deviation why the crew departed from the plan, null if it did not say
     * @param photos identities of the photos of the fitting
     * @param seamMm overlap of the guard's ends, null if nobody measured
     * @param guardClosedBelow null if nobody said
     * @param programme null if nobody said
     * @param pest EPPO code, null if nobody said
     * @param alsoUsed further parts as reel:id=mm and batch:id=pieces
     */
    public record Details(
            String device,
            int position,
            @Nullable String deviation,
            List<String> photos,
            @Nullable Long seamMm,
            @Nullable Boolean guardClosedBelow,
            @Nullable String programme,
            @Nullable String pest,
            List<String> alsoUsed) {}

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
                details,
                List.copyOf(found));
    }

    /**
     * One flag.
     *
     * @param flag the code of a {@link BandFlag}
     * @param field the field of the request it is about
     * @param message for people
     * @param open whether it is still so; what was found when the fitting arrived stays stored either way
     */
    public record Flag(String flag, String field, String message, boolean open) {
        /** A finding of a fitting that arrives now. */
        static Flag of(Finding finding) {
            return new Flag(finding.code(), finding.field(), finding.message(), true);
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
