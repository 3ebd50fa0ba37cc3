package org.bandtrail.supplystock.ledger;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bandtrail.supplystock.holdings.Place;

/**
 * Quantity and value by place of what is valued together: one reel, or the pool of a fastener. Places out of stock are
 * kept too, without value. Values change by shares and never by themselves, so their sum is what was put in less what
 * was taken out.
 */
final class Stock {
    /** What is at one place while a page is worked on: as loaded, and what the page added. */
    static final class Cell {
        long quantity;
        long minor;
        long addedQuantity;
        long addedMinor;

        /**
         * Whether a row of its own stands in the table; one that does not is written even if it comes back to
         * nothing.
         */
        boolean stored;

        Cell(long quantity, long minor) {
            this.quantity = quantity;
            this.minor = minor;
        }

        void add(long moreQuantity, long moreMinor) {
            quantity += moreQuantity;
            minor += moreMinor;
            addedQuantity += moreQuantity;
            addedMinor += moreMinor;
        }
    }

    /** Places in stock; all of them are loaded. */
    final SortedMap<Place, Cell> cells = new TreeMap<>();

    /** Places out of stock; once the holding is received only those that the page touches. */
    final SortedMap<Place, Cell> field = new TreeMap<>();

    Cell at(Place place) {
        return (place.kind().inStock() ? cells : field).computeIfAbsent(place, unused -> new Cell(0, 0));
    }

    /** Pieces or millimetres in stock. */
    long quantity() {
        return cells.values().stream().mapToLong(cell -> cell.quantity).sum();
    }

    /** Minor units in stock. */
    long minor() {
        return cells.values().stream().mapToLong(cell -> cell.minor).sum();
    }

    /**
     * The value that a quantity takes along when it leaves a place for another in stock: its share of what is there,
     * all of it if nothing stays behind. What the books do not know to be there takes the average of the whole stock.
     */
    long shareAt(Place place, long quantity) {
        Cell cell = at(place);
        if (cell.quantity == quantity) {
            return cell.minor;
        }
        if (cell.quantity > quantity) {
            return Share.of(cell.minor, quantity, cell.quantity);
        }
        long known = Math.max(0, cell.quantity);
        long whole = quantity();
        return (known == 0 ? 0 : cell.minor) + (whole <= 0 ? 0 : Share.of(minor(), quantity - known, whole));
    }

    /** An amount over the places in stock, by what is there; it all goes to one place if there is nothing to go by. */
    Map<Place, Long> spread(long amount) {
        Map<Place, Long> parts = new LinkedHashMap<>();
        long whole = quantity();
        if (amount == 0) {
            return parts;
        }
        if (whole <= 0) {
            parts.put(carrier(), amount);
            return parts;
        }
        long mark = 0;
        long given = 0;
        for (Map.Entry<Place, Cell> each : cells.entrySet()) {
            if (each.getValue().quantity != 0) {
                mark += each.getValue().quantity;
                long upTo = Share.of(amount, mark, whole);
                parts.put(each.getKey(), upTo - given);
                given = upTo;
            }
        }
        parts.values().removeIf(part -> part == 0);
        return parts;
    }

    /** Places in stock where value is left without anything it belongs to. */
    Map<Place, Long> stranded() {
        Map<Place, Long> left = new LinkedHashMap<>();
        cells.forEach((place, cell) -> {
            if (cell.quantity == 0 && cell.minor != 0) {
                left.put(place, cell.minor);
            }
        });
        return left;
    }

    /**
     * The place in stock that carries what has no place of its own: the one with most, else the one most in deficit,
     * else the first known.
     *
     * @throws IllegalStateException if it never was in stock
     */
    Place carrier() {
        return cells.entrySet().stream()
                .max(Comparator.<Map.Entry<Place, Cell>>comparingInt(
                                each -> Long.signum(Math.max(0, each.getValue().quantity)))
                        .thenComparingLong(each -> Math.abs(each.getValue().quantity))
                        .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .orElseThrow(() -> new IllegalStateException("What was never in stock has no value to carry."));
    }
}
