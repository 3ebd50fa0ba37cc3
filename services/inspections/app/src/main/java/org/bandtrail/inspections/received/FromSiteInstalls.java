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
        List<Portion> putUp = new ArrayList<>();
        if (fitted.tapeLengthMm() > 0) {
            putUp.add(Portion.tape(new ReelId(fitted.tapeReelId()), Length.ofMm(fitted.tapeLengthMm())));
        }
        String mesh = fitted.meshReelId();
        if (mesh != null && fitted.meshLengthMm() > 0) {
            putUp.add(Portion.mesh(new ReelId(mesh), Length.ofMm(fitted.meshLengthMm())));
        }
        String batch = fitted.fastenerBatchId();
        if (batch != null && fitted.fastenerPieces() > 0) {
            putUp.add(Portion.fasteners(new BatchId(batch), Pieces.of(fitted.fastenerPieces())));
        }
        putUp.addAll(further(fitted, putUp));
        return new HearOfFitting(
                new BandId(fitted.bandId()),
                eventId,
                new Trunk(new TreeId(fitted.treeId()), new SiteId(fitted.siteId())),
                new Doer(new CrewId(fitted.crewId()), new PersonId(fitted.personId()), new PersonId(fitted.by())),
                putUp,
                new Occurred(fitted.happenedAt(), clock.instant()));
    }

    /** The parts of a device that only the moves tell; what comes from a reel and is no tape can be used again. */
    private static List<Portion> further(BandFitted fitted, List<Portion> named) {
        List<Portion> unseen = new ArrayList<>(named);
        List<Portion> further = new ArrayList<>();
        for (MaterialMove move : fitted.moves()) {
            boolean known = unseen.stream()
                    .filter(piece -> piece.id().equals(move.id()) && piece.quantity() == move.quantity())
                    .findFirst()
                    .map(unseen::remove)
                    .orElse(false);
            if (!known) {
                further.add(
                        MaterialMove.REEL.equals(move.material())
                                ? Portion.mesh(new ReelId(move.id()), Length.ofMm(move.quantity()))
                                : Portion.fasteners(new BatchId(move.id()), Pieces.of(move.quantity())));
            }
        }
        return further;
    }
}
