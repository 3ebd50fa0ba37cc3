package org.bandtrail.supplystock.causes;

import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * A reel or batch with what the books know of it.
 *
 * @param kind TAPE, MESH or FASTENER, null while its receipt is not in the books
 * @param balances every place with a balance
 * @param told its moves, oldest first
 */
public record Suspect(String id, @Nullable String kind, Map<Place, Long> balances, List<Told> told) {
    /** The balance at a place. */
    long at(Place place) {
        return balances.getOrDefault(place, 0L);
    }

    /** Whether this person ever had it. */
    boolean wasWith(Custody custody) {
        return told.stream().anyMatch(move -> custody.holds(move.source()) || custody.holds(move.target()));
    }

    /** The place where it lacks or has too much by this amount, with the sign; null if there is none. */
    @Nullable
    Place disagreeingBy(long amount, CausePolicy policy) {
        for (Map.Entry<Place, Long> balance : balances.entrySet()) {
            PlaceKind kind = balance.getKey().kind();
            boolean open = kind == PlaceKind.MISSING || !kind.isOrigin() && balance.getValue() < 0;
            if (open
                    && Long.signum(balance.getValue()) == Long.signum(amount)
                    && policy.near(balance.getValue(), amount)) {
                return balance.getKey();
            }
        }
        return null;
    }
}
