package org.bandtrail.inspections.received;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.siteinstalls.contract.v1.MaterialMove;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Hears which bands were fitted, so that visits know what hangs where. */
@Component
class FromSiteInstalls implements ReceivedHandler {
    private final Bands bands;
    private final Clock clock;

    FromSiteInstalls(Bands bands, Clock clock) {
        this.bands = bands;
        this.clock = clock;
    }

    @Override
    public String source() {
        return "/bandtrail/site-installs";
    }

    @Override
    public boolean handles(String type) {
        return BandFitted.TYPE.equals(type);
    }

    @Override
    public void handle(Envelope envelope) {
        bands.tell(fitting(envelope.id(), envelope.dataAs(BandFitted.class)));
    }

    /** The same fact in this service's words; the event's own identity names it. */
    HearOfFitting fitting(String eventId, BandFitted fitted) {
        List<MaterialMove> moves = new ArrayList<>(fitted.moves());
        List<Portion> putUp = new ArrayList<>();
        if (fitted.tapeLengthMm() > 0) {
            // Without a word about it the piece round the trunk is sticky tape, which is never used again.
            Boolean again = taken(moves, fitted.tapeReelId(), fitted.tapeLengthMm());
            putUp.add(piece(fitted.tapeReelId(), fitted.tapeLengthMm(), again, false));
        }
        String mesh = fitted.meshReelId();
        if (mesh != null && fitted.meshLengthMm() > 0) {
            putUp.add(piece(mesh, fitted.meshLengthMm(), taken(moves, mesh, fitted.meshLengthMm()), true));
        }
        String batch = fitted.fastenerBatchId();
        if (batch != null && fitted.fastenerPieces() > 0) {
            taken(moves, batch, fitted.fastenerPieces());
            putUp.add(Portion.fasteners(new BatchId(batch), Pieces.of(fitted.fastenerPieces())));
        }
        moves.forEach(move -> putUp.add(further(move)));
        return new HearOfFitting(
                new BandId(fitted.bandId()),
                eventId,
                new Trunk(new TreeId(fitted.treeId()), new SiteId(fitted.siteId())),
                new Doer(new CrewId(fitted.crewId()), new PersonId(fitted.personId()), new PersonId(fitted.by())),
                putUp,
                new Occurred(fitted.happenedAt(), clock.instant()));
    }

    /** What is told of using the piece again; its move is taken off the list, null if there is none or it is silent. */
    private static @Nullable Boolean taken(List<MaterialMove> moves, String id, long quantity) {
        for (MaterialMove move : moves) {
            if (move.id().equals(id) && move.quantity() == quantity) {
                moves.remove(move);
                return move.reusable();
            }
        }
        return null;
    }

    /** A part of a device that only its move tells; without a word about it what comes from a reel can be used again. */
    private static Portion further(MaterialMove move) {
        return MaterialMove.REEL.equals(move.material())
                ? piece(move.id(), move.quantity(), move.reusable(), true)
                : Portion.fasteners(new BatchId(move.id()), Pieces.of(move.quantity()));
    }

    /** What can be used again is kept as mesh, which a teardown may give back; what cannot as tape, which it bags. */
    private static Portion piece(String reel, long mm, @Nullable Boolean told, boolean unlessTold) {
        return told == null ? piece(reel, mm, unlessTold) : piece(reel, mm, told);
    }

    private static Portion piece(String reel, long mm, boolean reusable) {
        return reusable
                ? Portion.mesh(new ReelId(reel), Length.ofMm(mm))
                : Portion.tape(new ReelId(reel), Length.ofMm(mm));
    }
}
