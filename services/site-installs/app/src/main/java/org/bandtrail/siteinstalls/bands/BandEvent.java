package org.bandtrail.siteinstalls.bands;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** What happened to bands. */
public sealed interface BandEvent {
    /** The band. */
    BandId bandId();

    /** The two times of the fact. */
    Occurred when();

    /**
     * A band was fitted.
     *
     * @param bandId the band
     * @param treeId the tree
     * @param siteId where the crew was
     * @param crewId the crew
     * @param personId who carried the material
     * @param girth as measured, else as registered, else as the tape tells
     * @param height above ground
     * @param tape the piece that goes round the trunk: sticky tape, or the cloth or skirt of another device
     * @param mesh the guard, null for none
     * @param fasteners null for none
     * @param mustRemoveBy the day by which it must be off
     * @param policyVersion the cut-length policy in force
     * @param findings what contradicted the books when it arrived
     * @param details which device, where on the trunk, what else was used; revision 1 knew none of it
     * @param by who reported it
     * @param when when
     */
    @StoredAs("band.fitted")
    @Revision("2")
    record BandFitted(
            BandId bandId,
            TreeId treeId,
            SiteId siteId,
            CrewId crewId,
            PersonId personId,
            Length girth,
            Length height,
            Piece tape,
            @Nullable Piece mesh,
            @Nullable Fasteners fasteners,
            LocalDate mustRemoveBy,
            int policyVersion,
            List<Finding> findings,
            FitDetails details,
            PersonId by,
            Occurred when)
            implements BandEvent {
        /** Keeps its own copy. */
        public BandFitted {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Pieces were renewed.
     *
     * @param bandId the band
     * @param visitId names the visit
     * @param treeId the tree, null if inspections did not know it
     * @param siteId the site, null likewise
     * @param tape the new tape, null if it stayed
     * @param mesh the new mesh, null if it stayed
     * @param fasteners the new fasteners, null if they stayed
     * @param by who did it
     * @param when when
     */
    @StoredAs("band.pieces-replaced")
    @Revision("1")
    record PiecesReplaced(
            BandId bandId,
            String visitId,
            @Nullable TreeId treeId,
            @Nullable SiteId siteId,
            @Nullable Piece tape,
            @Nullable Piece mesh,
            @Nullable Fasteners fasteners,
            PersonId by,
            Occurred when)
            implements BandEvent {}

    /**
     * The band came off its tree.
     *
     * @param bandId the band
     * @param teardownId names the teardown
     * @param treeId the tree, null if inspections did not know it
     * @param siteId the site, null likewise
     * @param by who took it down
     * @param when when
     */
    @StoredAs("band.taken-down")
    @Revision("1")
    record BandTakenDown(
            BandId bandId,
            String teardownId,
            @Nullable TreeId treeId,
            @Nullable SiteId siteId,
            PersonId by,
            Occurred when)
            implements BandEvent {}
}
