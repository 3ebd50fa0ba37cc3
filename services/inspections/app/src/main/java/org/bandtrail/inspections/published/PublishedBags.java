package org.bandtrail.inspections.published;

import java.util.List;
import org.bandtrail.inspections.bags.BagEvent;
import org.bandtrail.inspections.contract.v1.LoadDisposed;
import org.bandtrail.kernel.LoadId;

/** Translates what happened to a bag into the contract. */
final class PublishedBags {
    private PublishedBags() {}

    /** What others are told of an event; what went into a bag was told by the band it came from. */
    static List<Object> of(BagEvent event) {
        return switch (event) {
            case BagEvent.ContentsNoted _ -> List.of();
            case BagEvent.TakenAway gone -> List.of(disposed(gone, gone.load(), gone.carrier(), false));
            case BagEvent.ContentsFollowed late -> List.of(disposed(late, late.load(), late.carrier(), true));
        };
    }

    private static LoadDisposed disposed(BagEvent event, LoadId load, String carrier, boolean settlesEarlier) {
        return new LoadDisposed(
                load.value(),
                List.of(event.bag().value()),
                carrier,
                settlesEarlier,
                PublishedMoves.of(event.moves()),
                event.occurred().happened(),
                event.occurred().recorded(),
                event.doer().by().value());
    }
}
