package org.bandtrail.frontdesk.bands;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;

/** The list of bands as a file, with units in its headers. */
final class BandSheet {
    private BandSheet() {}

    static ResponseEntity<byte[]> file(String ending, List<Installs.Band> bands) {
        return new Listing<Installs.Band>()
                .column("band_id", Installs.Band::bandId)
                .column("tree_id", Installs.Band::treeId)
                .column("site_id", Installs.Band::siteId)
                .column("state", Installs.Band::state)
                .column("device", Installs.Band::device)
                .column("position", Installs.Band::position)
                .column("fitted_at", Installs.Band::fittedAt)
                .column("taken_down_at", Installs.Band::takenDownAt)
                .column("crew_id", Installs.Band::crewId)
                .column("person_id", Installs.Band::personId)
                .column("tape_reel_id", Installs.Band::tapeReelId)
                .column("tape_mm", Installs.Band::tapeMm)
                .column("mesh_reel_id", Installs.Band::meshReelId)
                .column("mesh_mm", Installs.Band::meshMm)
                .column("pieces", Installs.Band::pieces)
                .column("girth_mm", Installs.Band::girthMm)
                .column("height_mm", Installs.Band::heightMm)
                .column("seam_mm", Installs.Band::seamMm)
                .column("guard_closed_below", Installs.Band::guardClosedBelow)
                .column("must_remove_by", Installs.Band::mustRemoveBy)
                .column("policy_version", Installs.Band::policyVersion)
                .column("programme", Installs.Band::programme)
                .column("pest", Installs.Band::pest)
                .column("deviation", Installs.Band::deviation)
                .file("bands", ending, bands);
    }
}
