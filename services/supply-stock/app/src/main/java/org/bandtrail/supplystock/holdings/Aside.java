package org.bandtrail.supplystock.holdings;

import java.util.List;
import org.bandtrail.kernel.DepotId;

/**
 * An order of a recall about one depot: what the depot has goes aside, or up to so much of what is set aside there is
 * released. What the books no longer have there is not moved, so the order is never refused.
 *
 * @param what {@link StockMove#SET_ASIDE} or {@link StockMove#RELEASED}
 * @param atMost millimetres or pieces, above 0
 * @param reference what orders it, such as {@code recall RC-1}
 * @param reason in words
 */
public record Aside(StockMove what, DepotId depot, long atMost, String reference, String reason) {
    public Aside {
        if (what != StockMove.SET_ASIDE && what != StockMove.RELEASED || atMost <= 0) {
            throw new IllegalArgumentException(
                    "A recall sets aside or releases more than nothing; it cannot order %s of %s."
                            .formatted(what, atMost));
        }
    }

    /** All that a depot has goes aside. */
    public static Aside all(DepotId depot, String reference, String reason) {
        return new Aside(StockMove.SET_ASIDE, depot, Long.MAX_VALUE, reference, reason);
    }

    /** The moves this order makes of a holding; none if nothing is there. */
    public List<Move> moves(StockRules rules) {
        Place aside = Place.setAside(depot);
        if (what == StockMove.SET_ASIDE) {
            return StockRules.first(rules.outOf(depot, aside), atMost);
        }
        long there = Math.clamp(rules.holding().at(aside), 0, atMost);
        return there == 0 ? List.of() : List.of(new Move(aside, Place.depot(depot), there));
    }
}
