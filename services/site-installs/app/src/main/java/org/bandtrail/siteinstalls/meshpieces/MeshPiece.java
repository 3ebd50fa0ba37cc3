package org.bandtrail.siteinstalls.meshpieces;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Grade;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.NoteFitted;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Put;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.TakeBack;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.FittedAgain;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.Graded;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.PutElsewhere;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent.TakenBack;
import org.jspecify.annotations.Nullable;

/**
 * One piece of mesh. Facts may come in any order; of each kind the one that happened last counts.
 *
 * @param pieceId null before the first fact
 * @param reelId the reel it was cut from, null before the first fact
 * @param size how long it is, null before the first fact
 * @param worn how worn it is, null if nobody looked yet
 * @param where where it is, null before the first fact
 */
public record MeshPiece(
        @Nullable MeshPieceId pieceId,
        @Nullable ReelId reelId,
        @Nullable Size size,
        @Nullable Worn worn,
        @Nullable Where where) {
    /** Before the first fact. */
    public static final MeshPiece NONE = new MeshPiece(null, null, null, null, null);

    /** A length and since when it is known. */
    public record Size(Length length, Instant since) {}

    /** A wear and since when it is known. */
    public record Worn(Wear wear, Instant since) {}

    /**
     * Where it is and since when: on a band, or at a place.
     *
     * @param bandId the band it hangs on, null if it hangs on none
     * @param place who or what has it, null while it hangs on a band
     * @param since since when
     */
    public record Where(@Nullable BandId bandId, @Nullable String place, Instant since) {}

    /**
     * Decides a command.
     *
     * @throws MeshPieceRefused if nobody knows the piece that is graded or put
     */
    public List<MeshPieceEvent> decide(MeshPieceCommand command) {
        return switch (command) {
            case TakeBack back ->
                List.of(new TakenBack(
                        back.pieceId(),
                        back.reelId(),
                        back.length(),
                        back.bandId(),
                        back.place(),
                        back.by(),
                        back.when()));
            case NoteFitted fitted ->
                List.of(new FittedAgain(
                        fitted.pieceId(),
                        fitted.reelId(),
                        fitted.length(),
                        fitted.bandId(),
                        fitted.treeId(),
                        fitted.by(),
                        fitted.when()));
            case Grade grade -> {
                known(grade.pieceId());
                yield List.of(new Graded(
                        grade.pieceId(), grade.wear(), grade.length(), grade.note(), grade.by(), grade.when()));
            }
            case Put put -> {
                known(put.pieceId());
                yield List.of(new PutElsewhere(put.pieceId(), put.place(), put.by(), put.when()));
            }
        };
    }

    private void known(MeshPieceId asked) {
        if (pieceId == null) {
            throw new MeshPieceRefused.Unknown(asked);
        }
    }

    /** The piece after the event; an event of another piece is a damaged history and throws. */
    public MeshPiece evolve(MeshPieceEvent event) {
        if (pieceId != null && !pieceId.equals(event.pieceId())) {
            throw new IllegalStateException("Piece %s got an event of piece %s.".formatted(pieceId, event.pieceId()));
        }
        Instant at = event.when().happened();
        return switch (event) {
            case TakenBack back ->
                new MeshPiece(
                        back.pieceId(),
                        back.reelId(),
                        newer(size, new Size(back.length(), at)),
                        worn,
                        newer(where, new Where(null, back.place(), at)));
            case FittedAgain fitted ->
                new MeshPiece(
                        fitted.pieceId(),
                        fitted.reelId(),
                        newer(size, new Size(fitted.length(), at)),
                        worn,
                        newer(where, new Where(fitted.bandId(), null, at)));
            case Graded graded ->
                new MeshPiece(
                        graded.pieceId(),
                        reelId,
                        graded.length() == null ? size : newer(size, new Size(graded.length(), at)),
                        worn == null || !at.isBefore(worn.since()) ? new Worn(graded.wear(), at) : worn,
                        where);
            case PutElsewhere put ->
                new MeshPiece(put.pieceId(), reelId, size, worn, newer(where, new Where(null, put.place(), at)));
        };
    }

    private static Size newer(@Nullable Size known, Size heard) {
        return known == null || !heard.since().isBefore(known.since()) ? heard : known;
    }

    private static Where newer(@Nullable Where known, Where heard) {
        return known == null || !heard.since().isBefore(known.since()) ? heard : known;
    }
}
