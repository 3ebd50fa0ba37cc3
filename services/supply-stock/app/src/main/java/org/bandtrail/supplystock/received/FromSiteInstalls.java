package org.bandtrail.supplystock.received;

import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.springframework.stereotype.Component;

/** Hears from site-installs that bands were fitted: material leaves the person's custody for the tree. */
@Component
final class FromSiteInstalls implements ReceivedHandler {
    private final FieldFacts facts;
    private final BandFacts bands;

    FromSiteInstalls(FieldFacts facts, BandFacts bands) {
        this.facts = facts;
        this.bands = bands;
    }

    @Override
    public String source() {
        return "/bandtrail/site-installs";
    }

    @Override
    public boolean handles(String type) {
        return type.equals(BandFitted.TYPE);
    }

    @Override
    public void handle(Envelope envelope) {
        BandFitted fitted = envelope.dataAs(BandFitted.class);
        bands.hear(fitted);
        var told = new FieldFacts.Told(
                "band " + fitted.bandId(), fitted.siteId(), fitted.by(), fitted.happenedAt(), fitted.recordedAt());
        fitted.moves()
                .forEach(move ->
                        facts.record(told, move.material(), move.id(), move.quantity(), move.source(), move.target()));
    }
}
