package org.bandtrail.supplystock.holdings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How much of one reel or batch is at which place. The sum over all places, the supplier included, is always zero:
 * a move takes from one what it gives to another. Places with a zero balance are not kept.
 *
 * @param used what has left stock for trees, bags, disposal, narrower reels or the write-off. It is kept beside the
 *     balances because every fact asks for it, and a batch of pins can be on a thousand trees.
 */
public record Whereabouts(SortedMap<Place, Long> balances, long used) {
    public static final Whereabouts NOWHERE = new Whereabouts(new TreeMap<>(), 0);

    /** The balance at a place, negative if more was taken than the books knew. */
    public long at(Place place) {
        return balances.getOrDefault(place, 0L);
    }

    /** What came into the books so far: from the supplier, or out of a wider reel. */
    public long received() {
        return balances.entrySet().stream()
                .filter(each -> each.getKey().kind().isOrigin()
                        && (each.getValue() < 0 || each.getKey().kind() == PlaceKind.SUPPLIER))
                .mapToLong(each -> -each.getValue())
                .sum();
    }

    /** The sum over the places of these kinds. */
    public long sum(Predicate<PlaceKind> kinds) {
        return balances.entrySet().stream()
                .filter(entry -> kinds.test(entry.getKey().kind()))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    /** What will have left stock after these moves. */
    long usedAfter(List<Move> moves) {
        Map<Place, Long> touched = new HashMap<>();
        for (Move move : moves) {
            touched.merge(move.source(), -move.quantity(), Long::sum);
            touched.merge(move.target(), move.quantity(), Long::sum);
        }
        long after = used;
        for (Map.Entry<Place, Long> each : touched.entrySet()) {
            long before = at(each.getKey());
            after += usedAt(each.getKey(), before + each.getValue()) - usedAt(each.getKey(), before);
        }
        return after;
    }

    /** What of a balance at this place has left stock. A reel made from a wider one did not lose what it came from. */
    private static long usedAt(Place place, long balance) {
        return switch (place.kind()) {
            case SLIT -> Math.max(0, balance);
            case TREE, BAG, DISPOSED, WRITTEN_OFF -> balance;
            case SUPPLIER, SET_ASIDE, DEPOT, IN_TRANSIT, VEHICLE, CREW, MISSING -> 0;
        };
    }

    /** The whereabouts after these moves. */
    public Whereabouts after(List<Move> moves) {
        if (moves.isEmpty()) {
            return this;
        }
        TreeMap<Place, Long> next = new TreeMap<>(balances);
        for (Move move : moves) {
            add(next, move.source(), -move.quantity());
            add(next, move.target(), move.quantity());
        }
        return new Whereabouts(next, usedAfter(moves));
    }

    private static void add(TreeMap<Place, Long> balances, Place place, long quantity) {
        if (balances.merge(place, quantity, Long::sum) == 0) {
            balances.remove(place);
        }
    }

    /**
     * Where in stock it is, in words, for example {@code at crew:P-07 with 12.500 m}.
     *
     * @param quantity how to write a quantity with its unit
     */
    public String inWords(LongFunction<Object> quantity) {
        String places = balances.entrySet().stream()
                .filter(balance ->
                        balance.getValue() > 0 && balance.getKey().kind().inStock())
                .map(balance -> "at %s with %s".formatted(balance.getKey(), quantity.apply(balance.getValue())))
                .collect(Collectors.joining(" and "));
        return places.isEmpty() ? "nowhere in stock" : places;
    }
}
