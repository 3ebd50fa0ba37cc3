package org.bandtrail.siteinstalls.received;

import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.supplystock.contract.v1.ReelReceived;
import org.springframework.stereotype.Component;

/** Reels that came into a depot. Who carries which kit is supply-stock's own affair and of no use here. */
@Component
final class FromSupplyStock implements ReceivedHandler {
    private final KnownReels reels;

    FromSupplyStock(KnownReels reels) {
        this.reels = reels;
    }

    @Override
    public String source() {
        return "/bandtrail/supply-stock";
    }

    @Override
    public boolean handles(String type) {
        return type.equals(ReelReceived.TYPE);
    }

    @Override
    public void handle(Envelope envelope) {
        reels.remember(reel(envelope.dataAs(ReelReceived.class)));
    }

    static KnownReel reel(ReelReceived told) {
        Long opening = told.openingMm();
        return new KnownReel(
                new ReelId(told.reelId()),
                new MaterialCode(told.materialCode()),
                MaterialKind.valueOf(told.kind()),
                Length.ofMm(told.widthMm()),
                opening == null ? null : Length.ofMm(opening));
    }
}
