package org.bandtrail.siteinstalls.received;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.MaterialMove;
import org.bandtrail.inspections.contract.v1.PiecesReplaced;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Grade;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Put;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.TakeBack;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceId;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceView;
import org.bandtrail.siteinstalls.meshpieces.MeshPieces;
import org.bandtrail.siteinstalls.meshpieces.Wear;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/**
 * Mesh that came off a tree. A length that went back to a person becomes a piece, under the identity it was fitted with
 * if it was a piece before; a piece whose mesh went into a bag is scrap.
 */
@Component
final class MeshPieceFacts {
    private static final Logger LOG = LoggerFactory.getLogger(MeshPieceFacts.class);
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final String TREE = "tree:";
    private static final String CREW = "crew:";
    private static final String BAG = "bag:";
    private final Commands commands;
    private final MeshPieces pieces;
    private final KnownReels reels;
    private final ObjectProvider<Projectors> projectors;

    MeshPieceFacts(Commands commands, MeshPieces pieces, KnownReels reels, ObjectProvider<Projectors> projectors) {
        this.commands = commands;
        this.pieces = pieces;
        this.reels = reels;
        this.projectors = projectors;
    }

    /** What was done to one band. */
    private record Done(String work, BandId band, List<MaterialMove> moves, PersonId by, Occurred when) {}

    void hear(Envelope envelope) {
        Done done = switch (envelope.type()) {
            case BandTakenDown.TYPE -> of(envelope.dataAs(BandTakenDown.class));
            case PiecesReplaced.TYPE -> of(envelope.dataAs(PiecesReplaced.class));
            default -> throw new IllegalArgumentException("[%s] is not for us.".formatted(envelope.type()));
        };
        List<MaterialMove> offTree = done.moves().stream()
                .filter(move -> move.material().equals("reel") && move.source().startsWith(TREE))
                .filter(move -> move.target().startsWith(CREW) || move.target().startsWith(BAG))
                .filter(this::mesh)
                .toList();
        if (offTree.isEmpty()) {
            return;
        }
        // A piece fitted a moment ago may not be in the rows yet; then it comes back under a new identity.
        if (!projectors.getObject().caughtUp(PATIENCE)) {
            LOG.warn("The rows lag behind; mesh of band {} may come back under a new identity", done.band());
        }
        Optional<MeshPieceView> hanging = pieces.on(done.band());
        offTree.forEach(move -> tell(done, move, hanging));
    }

    private void tell(Done done, MaterialMove move, Optional<MeshPieceView> hanging) {
        ReelId reel = new ReelId(move.id());
        Optional<MeshPieceId> known = hanging.filter(piece -> piece.reelId().equals(reel.value()))
                .map(piece -> new MeshPieceId(piece.pieceId()));
        if (move.target().startsWith(CREW)) {
            commands.send(new TakeBack(
                    known.orElseGet(() -> MeshPieceId.made(done.work(), reel)),
                    reel,
                    Length.ofMm(move.quantity()),
                    done.band(),
                    move.target(),
                    done.by(),
                    done.when()));
        } else if (known.isPresent()) {
            String note = "went into " + move.target();
            commands.send(new Put(known.get(), move.target(), done.by(), done.when()));
            commands.send(new Grade(known.get(), Wear.SCRAP, null, note, done.by(), done.when()));
        }
    }

    /** Tape never comes back into use; a reel nobody told of yet is taken for mesh, because only mesh does. */
    private boolean mesh(MaterialMove move) {
        ReelId reel = new ReelId(move.id());
        KnownReel known = reels.known(List.of(reel)).get(reel);
        return known == null || known.kind() == MaterialKind.MESH;
    }

    private static Done of(BandTakenDown told) {
        return new Done(
                told.teardownId(),
                new BandId(told.bandId()),
                told.moves(),
                new PersonId(told.personId()),
                new Occurred(told.happenedAt(), told.recordedAt()));
    }

    private static Done of(PiecesReplaced told) {
        return new Done(
                told.visitId(),
                new BandId(told.bandId()),
                told.moves(),
                new PersonId(told.personId()),
                new Occurred(told.happenedAt(), told.recordedAt()));
    }
}
