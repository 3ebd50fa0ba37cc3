package org.bandtrail.supplystock.received;

import java.util.List;
import java.util.Set;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.BandVisited;
import org.bandtrail.inspections.contract.v1.LoadDisposed;
import org.bandtrail.inspections.contract.v1.MaterialMove;
import org.bandtrail.inspections.contract.v1.PiecesReplaced;
import org.springframework.stereotype.Component;

/** Hears from inspections what was counted, replaced, taken down and disposed. */
@Component
final class FromInspections implements ReceivedHandler {
    private static final Set<String> TYPES =
            Set.of(PiecesReplaced.TYPE, BandTakenDown.TYPE, LoadDisposed.TYPE, BandVisited.TYPE);
    private final FieldFacts facts;
    private final BandFacts bands;

    FromInspections(FieldFacts facts, BandFacts bands) {
        this.facts = facts;
        this.bands = bands;
    }

    @Override
    public String source() {
        return "/bandtrail/inspections";
    }

    @Override
    public boolean handles(String type) {
        return TYPES.contains(type);
    }

    @Override
    public void handle(Envelope envelope) {
        switch (envelope.type()) {
            case PiecesReplaced.TYPE -> {
                var event = envelope.dataAs(PiecesReplaced.class);
                record(
                        new FieldFacts.Told(
                                "band " + event.bandId(),
                                event.siteId(),
                                event.by(),
                                event.happenedAt(),
                                event.recordedAt()),
                        event.moves());
            }
            case BandTakenDown.TYPE -> {
                var event = envelope.dataAs(BandTakenDown.class);
                bands.hear(event);
                record(
                        new FieldFacts.Told(
                                "band " + event.bandId(),
                                event.siteId(),
                                event.by(),
                                event.happenedAt(),
                                event.recordedAt()),
                        event.moves());
            }
            case LoadDisposed.TYPE -> {
                var event = envelope.dataAs(LoadDisposed.class);
                record(
                        new FieldFacts.Told(
                                "load " + event.loadId(), null, event.by(), event.happenedAt(), event.recordedAt()),
                        event.moves());
            }
            case BandVisited.TYPE -> bands.hear(envelope.dataAs(BandVisited.class));
            default -> throw new IllegalStateException("Type [%s] is not handled here.".formatted(envelope.type()));
        }
    }

    private void record(FieldFacts.Told told, List<MaterialMove> moves) {
        moves.forEach(
                move -> facts.record(told, move.material(), move.id(), move.quantity(), move.source(), move.target()));
    }
}
