package org.bandtrail.supplystock.receiving;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.deliveries.Condition;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.DeliveryRefused;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.jspecify.annotations.Nullable;

/** Makes delivered lines of what arrived: gives identities, places and costs; pure. */
final class Comparing {
    private final Arrived arrived;
    private final Deque<String> numbers;

    /**
     * @param numbers proposed identities, at least as many as reels and batches have none
     */
    Comparing(Arrived arrived, List<String> numbers) {
        this.arrived = arrived;
        this.numbers = new ArrayDeque<>(numbers);
    }

    /** How many reels and batches have no identity of their own yet. */
    static int unnamed(Arrived arrived) {
        long reels = arrived.lines().stream()
                .flatMap(line -> line.reels().stream())
                .filter(reel -> reel.reelId() == null)
                .count();
        long batches = arrived.lines().stream()
                .flatMap(line -> line.batches().stream())
                .filter(batch -> batch.batchId() == null)
                .count();
        return Math.toIntExact(reels + batches);
    }

    /**
     * One line with its identities, places and costs.
     *
     * @param ordered line of the order, null if none
     * @param currency of the order, if there is one
     */
    DeliveredLine line(
            int number,
            Arrived.Line line,
            @Nullable OrderedLine ordered,
            @Nullable String currency,
            MaterialCode material,
            MaterialKind kind) {
        boolean asOrdered = ordered != null && ordered.material().equals(material);
        List<Long> quantities = new ArrayList<>();
        line.reels().forEach(reel -> quantities.add(reel.length().mm()));
        line.batches().forEach(batch -> quantities.add(batch.pieces().count()));
        long units = units(line, asOrdered ? ordered : null, quantities);
        Money cost = cost(number, line, asOrdered ? ordered : null, currency, units, quantities);
        List<Long> parts = quantities.isEmpty() || quantities.stream().anyMatch(each -> each <= 0)
                ? quantities
                : LineCost.split(cost.minor(), units, quantities);
        List<DeliveredHolding> holdings = holdings(line, parts, cost.currency());
        return new DeliveredLine(number, asOrdered ? line.purchaseLine() : null, material, kind, units, cost, holdings);
    }

    private List<DeliveredHolding> holdings(Arrived.Line line, List<Long> parts, String currency) {
        List<DeliveredHolding> holdings = new ArrayList<>();
        for (Arrived.Reel reel : line.reels()) {
            holdings.add(new DeliveredHolding(
                    "reel",
                    reel.reelId() == null
                            ? numbers.removeFirst()
                            : reel.reelId().value(),
                    reel.length().mm(),
                    reel.width() == null ? null : reel.width().mm(),
                    lot(reel.lot()),
                    reel.expiresOn(),
                    sound(reel.condition()),
                    Money.of(parts.get(holdings.size()), currency),
                    into(reel.condition(), reel.accept())));
        }
        for (Arrived.Batch batch : line.batches()) {
            holdings.add(new DeliveredHolding(
                    "batch",
                    batch.batchId() == null
                            ? numbers.removeFirst()
                            : batch.batchId().value(),
                    batch.pieces().count(),
                    null,
                    lot(batch.lot()),
                    batch.expiresOn(),
                    sound(batch.condition()),
                    Money.of(parts.get(holdings.size()), currency),
                    into(batch.condition(), batch.accept())));
        }
        return holdings;
    }

    private static long units(Arrived.Line line, @Nullable OrderedLine ordered, List<Long> quantities) {
        if (ordered == null || !ordered.packing().unit().counted()) {
            return 0;
        }
        if (line.units() != null) {
            return line.units();
        }
        return ordered.packing().content() == 1
                ? quantities.stream().mapToLong(Long::longValue).sum()
                : quantities.size();
    }

    private Money cost(
            int number,
            Arrived.Line line,
            @Nullable OrderedLine ordered,
            @Nullable String currency,
            long units,
            List<Long> quantities) {
        if (line.cost() != null) {
            return line.cost();
        }
        if (ordered == null || currency == null) {
            throw new DeliveryRefused.CostMissing(arrived.deliveryId(), number);
        }
        long quantity = quantities.stream().mapToLong(Long::longValue).sum();
        return Money.of(LineCost.of(ordered, units, quantity), currency);
    }

    private static @Nullable String lot(@Nullable String lot) {
        return lot == null || lot.isBlank() ? null : Lots.spelt(lot);
    }

    private static Condition sound(@Nullable Condition condition) {
        return Objects.requireNonNullElse(condition, Condition.SOUND);
    }

    private Place into(@Nullable Condition condition, @Nullable Boolean accept) {
        boolean wanted = accept == null ? arrived.accept() : accept;
        if (condition == Condition.DAMAGED || !wanted) {
            return Place.setAside(arrived.depotId());
        }
        String bin = arrived.bin();
        return bin == null || bin.isBlank()
                ? Place.depot(arrived.depotId())
                : Place.bin(arrived.depotId(), bin.strip());
    }
}
