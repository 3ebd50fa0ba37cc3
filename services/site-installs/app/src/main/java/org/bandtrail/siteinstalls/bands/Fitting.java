package org.bandtrail.siteinstalls.bands;

import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.jspecify.annotations.Nullable;

/**
 * What a crew says about a band it fitted.
 *
 * @param bandId chosen by the crew's device or written on the band
 * @param treeId the tree, known to the register or not
 * @param siteId where the crew was
 * @param crewId the crew
 * @param personId who carried the material
 * @param girth as written, null if nobody measured
 * @param height above ground, null if it is the usual one
 * @param tape the sticky piece
 * @param mesh the guard, null for none
 * @param fasteners null for none
 */
public record Fitting(
        BandId bandId,
        TreeId treeId,
        SiteId siteId,
        CrewId crewId,
        PersonId personId,
        @Nullable WrittenGirth girth,
        @Nullable Length height,
        Piece tape,
        @Nullable Piece mesh,
        @Nullable Fasteners fasteners) {}
