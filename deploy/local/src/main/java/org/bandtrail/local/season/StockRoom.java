package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One depot's shelves as they really are, and what it buys so that they do not run empty. */
final class StockRoom {
    private static final long PINS_LOW = 1200;
    private static final int PINS_BOUGHT = 2500;

    private final Place.Depot depot;
    private final Place place;
    private final Dice dice;
    private final SeasonBook book;
    private final Map<String, Held> shelf = new LinkedHashMap<>();
    private final Map<String, Long> pins = new LinkedHashMap<>();

    StockRoom(Place.Depot depot, Place place, Dice dice, SeasonBook book) {
        this.depot = depot;
        this.place = place;
        this.dice = dice;
        this.book = book;
    }

    /** Buys reels and pins up to this depot's levels; they arrive at this instant. */
    void restock(String lot, String arriveAt) {
        int crews = place.crewsOf(depot.depotId());
        buyUpTo("TAPE-127", 1 + 2 * crews, 4295, lot, arriveAt);
        buyUpTo("MESH-305-12", 2 + crews, 3390, lot, arriveAt);
        buyUpTo("MESH-457-06", 1 + crews, 5260, lot, arriveAt);
        if (pins.values().stream().mapToLong(Long::longValue).sum() < PINS_LOW) {
            String batch = book.next("F", 3);
            String material = depot.depotId().equals("D-3") ? "TACK-16" : "PIN-11";
            pins.put(batch, (long) PINS_BOUGHT);
            book.batches.add(
                    batch,
                    material,
                    depot.depotId(),
                    PINS_BOUGHT,
                    6375 - dice.between(0, 9) * 17,
                    "USD",
                    depot.keeper(),
                    arriveAt);
        }
    }

    private void buyUpTo(String material, int level, int usualCost, String lot, String arriveAt) {
        long full = lengthOf(material);
        long onShelf = shelf.values().stream()
                .filter(held -> held.material.equals(material) && held.woundMm() == full)
                .count();
        int cost = usualCost + dice.between(-3, 6) * 15;
        for (long i = onShelf; i < level; i++) {
            String reel = book.next("R", 4);
            shelf.put(reel, new Held(reel, material, full));
            book.reels.add(reel, material, depot.depotId(), full + " mm", cost, "USD", lot, depot.keeper(), arriveAt);
        }
    }

    private long lengthOf(String material) {
        var length = place.reelLengths().get(material);
        if (length == null) {
            throw new IllegalStateException("No reel length for " + material + " in items.csv");
        }
        return length.mm();
    }

    /** Takes reels of a material off the shelf, part reels first, until they hold this much together. */
    List<Held> take(String material, long wantedMm, long shortestPartMm) {
        List<Held> taken = new ArrayList<>();
        List<Held> candidates = shelf.values().stream()
                .filter(held -> held.material.equals(material))
                .filter(held -> held.woundMm() >= shortestPartMm || held.hasPieces())
                .sorted((a, b) -> Long.compare(a.woundMm(), b.woundMm()))
                .toList();
        long sum = 0;
        for (Held held : candidates) {
            if (sum < wantedMm) {
                taken.add(held);
                shelf.remove(held.reelId);
                sum += held.woundMm();
            }
        }
        if (sum < Math.min(wantedMm, shortestPartMm)) {
            throw new IllegalStateException("Depot %s has no %s left.".formatted(depot.depotId(), material));
        }
        return taken;
    }

    /** The part tape reel that lies loosest on the shelf, between these lengths, or null. */
    @Nullable
    Held takeUnwritten(long shortestMm, long longestMm) {
        Held found = shelf.values().stream()
                .filter(held -> held.material.equals("TAPE-127"))
                .filter(held -> held.woundMm() >= shortestMm && held.woundMm() <= longestMm)
                .findFirst()
                .orElse(null);
        if (found != null) {
            shelf.remove(found.reelId);
        }
        return found;
    }

    /** Puts what came back on the shelf. */
    void putBack(Held held) {
        if (held.totalMm() > 0) {
            Held there = shelf.get(held.reelId);
            if (there == null) {
                shelf.put(held.reelId, held);
            } else {
                there.join(held);
            }
        }
    }

    /** The oldest batch that has this many pieces; they are taken. */
    String takePins(long count) {
        for (Map.Entry<String, Long> batch : pins.entrySet()) {
            if (batch.getValue() >= count) {
                batch.setValue(batch.getValue() - count);
                return batch.getKey();
            }
        }
        throw new IllegalStateException("Depot %s has no fasteners left.".formatted(depot.depotId()));
    }

    void putBackPins(String batch, long count) {
        pins.merge(batch, count, Long::sum);
    }

    Place.Depot depot() {
        return depot;
    }
}
