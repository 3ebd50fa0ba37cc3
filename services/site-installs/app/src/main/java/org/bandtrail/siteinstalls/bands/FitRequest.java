package org.bandtrail.siteinstalls.bands;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
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
import org.bandtrail.siteinstalls.meshpieces.MeshPieceId;
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
 * @param device code of the kind of device; left out for a sticky band
 * @param position on the trunk, 1 the lowest; left out for 1
 * @param deviation why the crew departed from the plan; left out if it did not
 * @param photos identities of photos; left out for none
 * @param seam of the guard; left out if nobody measured
 * @param guardClosedBelow left out if nobody said
 * @param programme it is fitted for; left out if nobody said
 * @param pest EPPO code of the pest; left out if nobody said
 * @param alsoCut further pieces of reels; left out for none
 * @param alsoCounted further counted parts; left out for none
 * @param meshPiece the piece of reused mesh the guard is; left out if it was cut from the reel
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
        @NotNull Instant happenedAt,
        @Nullable String device,
        @Nullable Integer position,
        @Nullable String deviation,
        @Nullable List<String> photos,
        @Nullable Length seam,
        @Nullable Boolean guardClosedBelow,
        @Nullable String programme,
        @Nullable String pest,
        @Nullable List<@Valid Cut> alsoCut,
        @Nullable List<@Valid Used> alsoCounted,
        @Nullable MeshPieceId meshPiece) {

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

    /**
     * What the crew says.
     *
     * @throws IllegalArgumentException naming a girth that cannot be read, or a piece without its mesh
     */
    Fitting fitting() {
        if (meshPiece != null && mesh == null) {
            throw new IllegalArgumentException(
                    "Piece [%s] is named without its mesh. Send the reel and the length beside it."
                            .formatted(meshPiece));
        }
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
                fasteners == null ? null : fasteners.fasteners(),
                details(),
                meshPiece);
    }

    private FitDetails details() {
        return new FitDetails(
                Objects.requireNonNullElse(said(device), FitDetails.STICKY_BAND),
                Objects.requireNonNullElse(position, 1),
                said(deviation),
                Objects.requireNonNullElse(photos, List.of()),
                seam,
                guardClosedBelow,
                said(programme),
                said(pest),
                Objects.requireNonNullElse(alsoCut, List.<Cut>of()).stream()
                        .map(Cut::piece)
                        .toList(),
                Objects.requireNonNullElse(alsoCounted, List.<Used>of()).stream()
                        .filter(used -> used.pieces().isPositive())
                        .map(used -> new Fasteners(used.batchId(), used.pieces()))
                        .toList());
    }

    /** What was written, null for nothing but blanks. */
    private static @Nullable String said(@Nullable String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }

    BandBooks.Dated dated() {
        return new BandBooks.Dated(fitting(), happenedAt);
    }
}
