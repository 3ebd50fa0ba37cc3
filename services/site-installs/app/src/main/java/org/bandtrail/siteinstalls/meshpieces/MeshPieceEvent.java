package org.bandtrail.siteinstalls.meshpieces;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** What happened to pieces of mesh. */
public sealed interface MeshPieceEvent {
    /** The piece. */
    MeshPieceId pieceId();

    /** Who told or did it. */
    PersonId by();

    /** The two times of the fact. */
    Occurred when();

    /**
     * It came back to be used again.
     *
     * @param pieceId the piece
     * @param reelId the reel it was cut from
     * @param length how long it is
     * @param bandId the band it hung on, null if it was found
     * @param place who or what has it
     * @param by who did it
     * @param when when
     */
    @StoredAs("mesh-piece.taken-back")
    @Revision("1")
    record TakenBack(
            MeshPieceId pieceId,
            ReelId reelId,
            Length length,
            @Nullable BandId bandId,
            String place,
            PersonId by,
            Occurred when)
            implements MeshPieceEvent {}

    /**
     * Somebody looked at it.
     *
     * @param pieceId the piece
     * @param wear how worn it is
     * @param length how long it is, null if nobody measured
     * @param note in words, may be empty
     * @param by who looked
     * @param when when
     */
    @StoredAs("mesh-piece.graded")
    @Revision("1")
    record Graded(MeshPieceId pieceId, Wear wear, @Nullable Length length, String note, PersonId by, Occurred when)
            implements MeshPieceEvent {}

    /**
     * It lies somewhere else.
     *
     * @param pieceId the piece
     * @param place who or what has it
     * @param by who put it there
     * @param when when
     */
    @StoredAs("mesh-piece.put")
    @Revision("1")
    record PutElsewhere(MeshPieceId pieceId, String place, PersonId by, Occurred when) implements MeshPieceEvent {}

    /**
     * It guards a band.
     *
     * @param pieceId the piece
     * @param reelId the reel it was cut from
     * @param length how much of it was used
     * @param bandId the band
     * @param treeId the tree
     * @param by who reported it
     * @param when when
     */
    @StoredAs("mesh-piece.fitted")
    @Revision("1")
    record FittedAgain(
            MeshPieceId pieceId, ReelId reelId, Length length, BandId bandId, TreeId treeId, PersonId by, Occurred when)
            implements MeshPieceEvent {}
}
