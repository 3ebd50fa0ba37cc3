package org.bandtrail.siteinstalls.meshpieces;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One piece of mesh as people see it; lengths in millimetres.
 *
 * @param pieceId the piece
 * @param reelId the reel it was cut from
 * @param lengthMm how long it is
 * @param widthMm width of its reel, null if supply-stock has not told of the reel
 * @param openingMm opening of its reel, null likewise
 * @param wear good, worn or scrap; null if nobody looked yet
 * @param bandId the band it hangs on, null if it is free
 * @param place who or what has it, null while it hangs
 * @param since since when it is there
 * @param timesFitted how often it was fitted again
 */
public record MeshPieceView(
        String pieceId,
        String reelId,
        long lengthMm,
        @Nullable Long widthMm,
        @Nullable Long openingMm,
        @Nullable String wear,
        @Nullable String bandId,
        @Nullable String place,
        Instant since,
        long timesFitted) {

    /**
     * One thing that happened to a piece.
     *
     * @param what in words
     * @param happenedAt when
     * @param recordedAt when the books learnt of it
     * @param by who
     * @param bandId the band it was about, null if none
     * @param note details
     */
    public record Step(
            String what,
            Instant happenedAt,
            Instant recordedAt,
            String by,
            @Nullable String bandId,
            String note) {}

    /**
     * A piece with its history, newest first, as one flat object.
     *
     * @param piece the piece
     * @param history what happened to it
     */
    public record Whole(@JsonUnwrapped MeshPieceView piece, List<Step> history) {}
}
