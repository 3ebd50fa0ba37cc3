package org.bandtrail.siteinstalls.received;

import java.util.Set;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.supplystock.contract.v1.DepotStockChanged;
import org.bandtrail.supplystock.contract.v1.HoldingLabelled;
import org.bandtrail.supplystock.contract.v1.HoldingReserved;
import org.bandtrail.supplystock.contract.v1.ReelReceived;
import org.springframework.stereotype.Component;

/** Reels and what lies in the depots. Who carries which kit is supply-stock's own affair and of no use here. */
@Component
final class FromSupplyStock implements ReceivedHandler {
    private static final Set<String> HEARD =
            Set.of(ReelReceived.TYPE, DepotStockChanged.TYPE, HoldingLabelled.TYPE, HoldingReserved.TYPE);

    private final KnownReels reels;
    private final DepotFacts depots;

    FromSupplyStock(KnownReels reels, DepotFacts depots) {
        this.reels = reels;
        this.depots = depots;
    }

    @Override
    public String source() {
        return "/bandtrail/supply-stock";
    }

    @Override
    public boolean handles(String type) {
        return HEARD.contains(type);
    }

    @Override
    public void handle(Envelope envelope) {
        switch (envelope.type()) {
            case ReelReceived.TYPE -> reels.remember(reel(envelope.dataAs(ReelReceived.class)));
            case DepotStockChanged.TYPE -> depots.hear(envelope.dataAs(DepotStockChanged.class));
            case HoldingLabelled.TYPE -> depots.hear(envelope.dataAs(HoldingLabelled.class));
            case HoldingReserved.TYPE -> depots.hear(envelope.dataAs(HoldingReserved.class));
            default -> throw new IllegalArgumentException("[%s] is not heard here.".formatted(envelope.type()));
        }
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
