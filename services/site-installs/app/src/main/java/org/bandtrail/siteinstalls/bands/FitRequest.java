package org.bandtrail.siteinstalls.bands;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import java.util.UUID;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.jspecify.annotations.Nullable;

/**
 * A fitted band as a crew's device sends it; lengths are text with their unit.
 *
 * @param commandId made by the device, UUIDv7
 * @param bandId the band
 * @param treeId the tree
 * @param siteId the site
 * @param crewId the crew
 * @param personId who carried the material
 * @param girth round the trunk, for example 1234 mm; left out if nobody measured
 * @param height above ground; left out if it is the usual one
 * @param tape the sticky piece
 * @param mesh the guard; left out for none
 * @param fasteners left out for none
 * @param happenedAt when it was fitted
 */
record FitRequest(
        @NotNull UUID commandId,
        @NotNull BandId bandId,
        @NotNull TreeId treeId,
        @NotNull SiteId siteId,
        @NotNull CrewId crewId,
        @NotNull PersonId personId,
        @Nullable String girth,
        @Nullable Length height,
        @NotNull @Valid Cut tape,
        @Nullable @Valid Cut mesh,
        @Nullable @Valid Used fasteners,
        @NotNull Instant happenedAt) {

    /** A piece of a reel. */
    record Cut(@NotNull ReelId reelId, @NotNull Length length) {
        Piece piece() {
            return new Piece(reelId, length);
        }
    }

    /** Fasteners of a batch. */
    record Used(@NotNull BatchId batchId, @NotNull Pieces pieces) {
        @Nullable
        Fasteners fasteners() {
            return pieces.isPositive() ? new Fasteners(batchId, pieces) : null;
        }
    }

    Fitting fitting() {
        return new Fitting(
                bandId,
                treeId,
                siteId,
                crewId,
                personId,
                girth == null || girth.isBlank() ? null : WrittenGirth.ofGirth(girth),
                height,
                tape.piece(),
                mesh == null ? null : mesh.piece(),
                fasteners == null ? null : fasteners.fasteners());
    }

    BandBooks.Dated dated() {
        return new BandBooks.Dated(fitting(), happenedAt);
    }
}
