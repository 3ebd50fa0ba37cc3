package org.bandtrail.siteinstalls.meshpieces;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** What people and inspections say about pieces of mesh. */
public sealed interface MeshPieceCommand {
    /** The piece. */
    MeshPieceId pieceId();

    /**
     * Mesh came off a tree to be used again, or was found.
     *
     * @param pieceId the piece
     * @param reelId the reel it was cut from
     * @param length how long it is
     * @param bandId the band it hung on, null if it was found
     * @param place who or what has it: {@code crew:<person>} or {@code depot:<depot>}
     * @param by who did it
     * @param when when
     */
    record TakeBack(
            @TargetAggregateIdentifier MeshPieceId pieceId,
            ReelId reelId,
            Length length,
            @Nullable BandId bandId,
            String place,
            PersonId by,
            Occurred when)
            implements MeshPieceCommand {}

    /**
     * Somebody looked at the piece.
     *
     * @param pieceId the piece
     * @param wear how worn it is
     * @param length how long it is now, null if nobody measured
     * @param note in words, may be empty
     * @param by who looked
     * @param when when
     */
    record Grade(
            @TargetAggregateIdentifier MeshPieceId pieceId,
            Wear wear,
            @Nullable Length length,
            String note,
            PersonId by,
            Occurred when)
            implements MeshPieceCommand {}

    /**
     * The piece lies somewhere else now.
     *
     * @param pieceId the piece
     * @param place {@code crew:<person>}, {@code depot:<depot>} or {@code bag:<bag>}
     * @param by who put it there
     * @param when when
     */
    record Put(@TargetAggregateIdentifier MeshPieceId pieceId, String place, PersonId by, Occurred when)
            implements MeshPieceCommand {}

    /**
     * A band was fitted with the piece as its guard.
     *
     * @param pieceId the piece, known or not
     * @param reelId the reel it was cut from
     * @param length how much of it was used
     * @param bandId the band
     * @param treeId the tree
     * @param by who reports it
     * @param when when
     */
    record NoteFitted(
            @TargetAggregateIdentifier MeshPieceId pieceId,
            ReelId reelId,
            Length length,
            BandId bandId,
            TreeId treeId,
            PersonId by,
            Occurred when)
            implements MeshPieceCommand {}
}
