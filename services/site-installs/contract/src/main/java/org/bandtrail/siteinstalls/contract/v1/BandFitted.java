package org.bandtrail.siteinstalls.contract.v1;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A crew put a band on a tree. It is a fact of the field: it is told even where the books disagree (unknown reel, tree
 * already banded), and whoever keeps those books finds the difference.
 *
 * @param bandId the band's identity
 * @param treeId the tree, which the register may not know yet
 * @param siteId the site the crew was at; the cost is charged to it
 * @param crewId the crew
 * @param personId who carried the material and fitted the band
 * @param girthMm circumference of the trunk at the band in millimetres
 * @param heightMm height of the band above ground in millimetres
 * @param tapeReelId the reel of the piece that goes round the trunk: sticky tape, or the cloth or skirt of another
 *     device
 * @param tapeLengthMm that piece in millimetres, with overlap and tabs
 * @param meshReelId the reel the guard mesh was cut from, null for a band without a guard
 * @param meshLengthMm mesh in millimetres, 0 without a guard
 * @param fastenerBatchId the batch of the pins, null if none were used
 * @param fastenerPieces pins used, 0 if none
 * @param moves the same material and the further parts of the device, as moves from {@code crew:<personId>} to
 *     {@code tree:<treeId>}
 * @param happenedAt when the band was fitted
 * @param recordedAt when site-installs learnt of it
 * @param by who reported it
 * @param device code of the kind of device, null from a publisher that knew only sticky bands
 * @param position which one on the trunk, 1 is the lowest; null from a publisher that knew only one
 */
public record BandFitted(
        String bandId,
        String treeId,
        String siteId,
        String crewId,
        String personId,
        long girthMm,
        long heightMm,
        String tapeReelId,
        long tapeLengthMm,
        @Nullable String meshReelId,
        long meshLengthMm,
        @Nullable String fastenerBatchId,
        long fastenerPieces,
        List<MaterialMove> moves,
        Instant happenedAt,
        Instant recordedAt,
        String by,
        @Nullable String device,
        @Nullable Integer position) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "site-installs.band-fitted.v1";

    /** A band as publishers told it before devices were told apart. */
    public BandFitted(
            String bandId,
            String treeId,
            String siteId,
            String crewId,
            String personId,
            long girthMm,
            long heightMm,
            String tapeReelId,
            long tapeLengthMm,
            @Nullable String meshReelId,
            long meshLengthMm,
            @Nullable String fastenerBatchId,
            long fastenerPieces,
            List<MaterialMove> moves,
            Instant happenedAt,
            Instant recordedAt,
            String by) {
        this(
                bandId,
                treeId,
                siteId,
                crewId,
                personId,
                girthMm,
                heightMm,
                tapeReelId,
                tapeLengthMm,
                meshReelId,
                meshLengthMm,
                fastenerBatchId,
                fastenerPieces,
                moves,
                happenedAt,
                recordedAt,
                by,
                null,
                null);
    }

    /** Keeps its own copy of the moves. */
    public BandFitted {
        moves = List.copyOf(moves);
    }

    /** The subject attribute of the envelope: order is promised per band. */
    public String subject() {
        return "band/" + bandId;
    }
}
