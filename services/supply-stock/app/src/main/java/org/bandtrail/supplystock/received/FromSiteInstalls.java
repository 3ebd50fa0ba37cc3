package org.bandtrail.supplystock.received;

import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.siteinstalls.contract.v1.MaterialNeeded;
import org.bandtrail.supplystock.needs.PlannedNeed;
import org.bandtrail.supplystock.needs.PlannedNeeds;
import org.springframework.stereotype.Component;

/**
 * Hears from site-installs that bands were fitted: material leaves the person's custody for the tree. And what work plans
 * need: demand to come.
 */
@Component
final class FromSiteInstalls implements ReceivedHandler {
    private final FieldFacts facts;
    private final BandFacts bands;
    private final PlannedNeeds needs;

    FromSiteInstalls(FieldFacts facts, BandFacts bands, PlannedNeeds needs) {
        this.facts = facts;
        this.bands = bands;
        this.needs = needs;
    }

    @Override
    public String source() {
        return "/bandtrail/site-installs";
    }

    @Override
    public boolean handles(String type) {
        return type.equals(BandFitted.TYPE) || type.equals(MaterialNeeded.TYPE);
    }

    @Override
    public void handle(Envelope envelope) {
        if (envelope.type().equals(MaterialNeeded.TYPE)) {
            hear(envelope.dataAs(MaterialNeeded.class));
        } else {
            hear(envelope.dataAs(BandFitted.class));
        }
    }

    private void hear(MaterialNeeded told) {
        needs.replace(
                told.planId(),
                told.sequence(),
                told.lines().stream()
                        .map(line -> new PlannedNeed(
                                told.planId(),
                                new MaterialCode(line.materialCode()),
                                MaterialKind.valueOf(line.kind()),
                                new DepotId(line.depotId()),
                                line.day(),
                                line.lastDay(),
                                line.quantity(),
                                line.longestMm()))
                        .toList());
    }

    private void hear(BandFitted fitted) {
        bands.hear(fitted);
        var told = new FieldFacts.Told(
                "band " + fitted.bandId(), fitted.siteId(), fitted.by(), fitted.happenedAt(), fitted.recordedAt());
        fitted.moves()
                .forEach(move ->
                        facts.record(told, move.material(), move.id(), move.quantity(), move.source(), move.target()));
    }
}
