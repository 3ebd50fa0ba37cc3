package org.bandtrail.supplystock.holdings;

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
 */
public record Whereabouts(SortedMap<Place, Long> balances) {
    public static final Whereabouts NOWHERE = new Whereabouts(new TreeMap<>());

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

    /** What has left stock for trees, bags, disposal, narrower reels or the write-off. */
    public long used() {
        return balances.entrySet().stream()
                .filter(each -> !each.getKey().kind().inStock()
                        && (!each.getKey().kind().isOrigin()
                                || each.getKey().kind() == PlaceKind.SLIT && each.getValue() > 0))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    /** The whereabouts after these moves. */
    public Whereabouts after(List<Move> moves) {
        TreeMap<Place, Long> next = new TreeMap<>(balances);
        for (Move move : moves) {
            next.merge(move.source(), -move.quantity(), Long::sum);
            next.merge(move.target(), move.quantity(), Long::sum);
        }
        next.values().removeIf(balance -> balance == 0);
        return new Whereabouts(next);
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
