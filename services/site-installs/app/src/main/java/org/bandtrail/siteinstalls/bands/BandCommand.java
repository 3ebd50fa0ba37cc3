package org.bandtrail.siteinstalls.bands;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** What people and inspections say about bands. All are facts: none is ever refused. */
public sealed interface BandCommand {
    /** The band. */
    BandId bandId();

    /**
     * A crew fitted a band.
     *
     * @param bandId the band of the fitting
     * @param fitting what the crew says
     * @param books what the books say
     * @param by who reports it
     * @param when when it was done and when it arrived
     */
    record FitBand(@TargetAggregateIdentifier BandId bandId, Fitting fitting, Books books, PersonId by, Occurred when)
            implements BandCommand {}

    /**
     * Pieces of the band were renewed, as inspections tells.
     *
     * @param bandId the band
     * @param visitId names the visit
     * @param treeId the tree, null while inspections does not know it
     * @param siteId the site, null likewise
     * @param tape the new tape, null if it stayed
     * @param mesh the new mesh, null if it stayed
     * @param fasteners the new fasteners, null if they stayed
     * @param by who did it
     * @param when when
     */
    record NoteReplacement(
            @TargetAggregateIdentifier BandId bandId,
            String visitId,
            @Nullable TreeId treeId,
            @Nullable SiteId siteId,
            @Nullable Piece tape,
            @Nullable Piece mesh,
            @Nullable Fasteners fasteners,
            PersonId by,
            Occurred when)
            implements BandCommand {}

    /**
     * The band came off its tree, as inspections tells.
     *
     * @param bandId the band
     * @param teardownId names the teardown
     * @param treeId the tree, null while inspections does not know it
     * @param siteId the site, null likewise
     * @param by who took it down
     * @param when when
     */
    record NoteTakenDown(
            @TargetAggregateIdentifier BandId bandId,
            String teardownId,
            @Nullable TreeId treeId,
            @Nullable SiteId siteId,
            PersonId by,
            Occurred when)
            implements BandCommand {}
}
