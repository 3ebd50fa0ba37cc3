package org.bandtrail.siteinstalls.received;

import java.util.Optional;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.PiecesReplaced;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.bands.BandCommand;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteReplacement;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteTakenDown;
import org.bandtrail.siteinstalls.bands.Fasteners;
import org.bandtrail.siteinstalls.bands.Piece;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Bands whose pieces were replaced or that were taken down. A message that only settles moves of an earlier one
 * ({@code settlesEarlier}) says nothing new about the band; its moves can
 * still bring mesh back ({@link MeshPieceFacts}).
 */
@Component
final class FromInspections implements ReceivedHandler {
    private final Commands commands;
    private final MeshPieceFacts pieces;

    FromInspections(Commands commands, MeshPieceFacts pieces) {
        this.commands = commands;
        this.pieces = pieces;
    }

    @Override
    public String source() {
        return "/bandtrail/inspections";
    }

    @Override
    public boolean handles(String type) {
        return type.equals(PiecesReplaced.TYPE) || type.equals(BandTakenDown.TYPE);
    }

    @Override
    public void handle(Envelope envelope) {
        command(envelope).ifPresent(commands::send);
        pieces.hear(envelope);
    }

    /** What follows from an event, empty if nothing does. */
    static Optional<BandCommand> command(Envelope envelope) {
        return switch (envelope.type()) {
            case PiecesReplaced.TYPE -> replacement(envelope.dataAs(PiecesReplaced.class));
            case BandTakenDown.TYPE -> takenDown(envelope.dataAs(BandTakenDown.class));
            default -> throw new IllegalArgumentException("[%s] is not for us.".formatted(envelope.type()));
        };
    }

    private static Optional<BandCommand> replacement(PiecesReplaced told) {
        if (told.settlesEarlier()) {
            return Optional.empty();
        }
        return Optional.of(new NoteReplacement(
                new BandId(told.bandId()),
                told.visitId(),
                tree(told.treeId()),
                site(told.siteId()),
                piece(told.newTapeReelId(), told.newTapeLengthMm()),
                piece(told.newMeshReelId(), told.newMeshLengthMm()),
                fasteners(told.fastenerBatchId(), told.fastenerPieces()),
                new PersonId(told.personId()),
                new Occurred(told.happenedAt(), told.recordedAt())));
    }

    private static Optional<BandCommand> takenDown(BandTakenDown told) {
        if (told.settlesEarlier()) {
            return Optional.empty();
        }
        return Optional.of(new NoteTakenDown(
                new BandId(told.bandId()),
                told.teardownId(),
                tree(told.treeId()),
                site(told.siteId()),
                new PersonId(told.personId()),
                new Occurred(told.happenedAt(), told.recordedAt())));
    }

    private static @Nullable TreeId tree(@Nullable String treeId) {
        return treeId == null ? null : new TreeId(treeId);
    }

    private static @Nullable SiteId site(@Nullable String siteId) {
        return siteId == null ? null : new SiteId(siteId);
    }

    private static @Nullable Piece piece(@Nullable String reelId, long lengthMm) {
        return reelId == null ? null : new Piece(new ReelId(reelId), Length.ofMm(lengthMm));
    }

    private static @Nullable Fasteners fasteners(@Nullable String batchId, long pieces) {
        return batchId == null ? null : new Fasteners(new BatchId(batchId), Pieces.of(pieces));
    }
}
