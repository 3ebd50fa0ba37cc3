package org.bandtrail.siteinstalls.bands;

import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceId;
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
 * @param tape the piece that goes round the trunk: sticky tape, or the cloth or skirt of another device
 * @param mesh the guard, null for none
 * @param fasteners null for none
 * @param details which device, where on the trunk, what else was used
 * @param meshPiece the piece of reused mesh that the guard is, null if it was cut from the reel
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
        @Nullable Fasteners fasteners,
        FitDetails details,
        @Nullable MeshPieceId meshPiece) {

    /** With a guard cut from its reel. */
    public Fitting(
            BandId bandId,
            TreeId treeId,
            SiteId siteId,
            CrewId crewId,
            PersonId personId,
            @Nullable WrittenGirth girth,
            @Nullable Length height,
            Piece tape,
            @Nullable Piece mesh,
            @Nullable Fasteners fasteners,
            FitDetails details) {
        this(bandId, treeId, siteId, crewId, personId, girth, height, tape, mesh, fasteners, details, null);
    }

    /** A sticky band at the usual place. */
    public Fitting(
            BandId bandId,
            TreeId treeId,
            SiteId siteId,
            CrewId crewId,
            PersonId personId,
            @Nullable WrittenGirth girth,
            @Nullable Length height,
            Piece tape,
            @Nullable Piece mesh,
            @Nullable Fasteners fasteners) {
        this(bandId, treeId, siteId, crewId, personId, girth, height, tape, mesh, fasteners, FitDetails.USUAL);
    }

    /** The same fitting with other details. */
    public Fitting with(FitDetails told) {
        return new Fitting(
                bandId, treeId, siteId, crewId, personId, girth, height, tape, mesh, fasteners, told, meshPiece);
    }
}
