package org.bandtrail.supplystock.holdings;

import java.util.EnumMap;
import org.jspecify.annotations.Nullable;

/** What the events of one page change about one reel or batch, summed up. */
final class Sums {
    final String id;
    private final EnumMap<PlaceKind, Long> byKind = new EnumMap<>(PlaceKind.class);
    long chargedMinor;
    long writtenOffMinor;
    long writtenDownMinor;
    long slitMinor;
    long bought;
    long costMinor;
    long position;

    @Nullable
    String lastHolder;

    String lastMoved = "";

    @Nullable
    Line receipt;

    Sums(String id) {
        this.id = id;
    }

    long of(PlaceKind kind) {
        return byKind.getOrDefault(kind, 0L);
    }

    void add(Line line) {
        for (Move move : line.entry().moves()) {
            byKind.merge(move.source().kind(), -move.quantity(), Long::sum);
            byKind.merge(move.target().kind(), move.quantity(), Long::sum);
            holder(move.source());
            holder(move.target());
        }
        for (Charge charge : line.entry().charges()) {
            charge(charge);
        }
        bought += line.revalued().boughtDelta()
                + (line.bought() == null ? 0 : line.bought().quantity());
        costMinor += line.revalued().costDelta()
                + (line.bought() == null ? 0 : line.bought().cost().minor());
        position = line.position();
        String moved = line.happened().toString();
        lastMoved = lastMoved.compareTo(moved) > 0 ? lastMoved : moved;
        receipt = line.bought() == null ? receipt : line;
    }

    private void charge(Charge charge) {
        if (charge.account().equals(Charge.WRITTEN_OFF)) {
            writtenOffMinor += charge.minor();
        } else if (charge.account().equals(Charge.WRITTEN_DOWN)) {
            writtenDownMinor += charge.minor();
        } else if (charge.account().startsWith(Charge.slit(""))) {
            slitMinor += charge.minor();
        } else {
            chargedMinor += charge.minor();
        }
    }

    private void holder(Place place) {
        if (place.kind() == PlaceKind.CREW) {
            lastHolder = place.id();
        }
    }
}
