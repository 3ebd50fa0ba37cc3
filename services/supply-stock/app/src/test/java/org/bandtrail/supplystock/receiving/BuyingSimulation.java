package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Length;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.purchases.Received;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** Length, units and money conserve from the order over every delivery to every reel, and back to the supplier. */
class BuyingSimulation {
    private static final int HISTORIES = 20_000;

    /**
     * @param delivery which delivery goes back, or below zero for a new delivery of this order line
     */
    private record Step(int delivery, int line, long units, List<Length> lengths, List<String> keys) {}

    @Test
    void what_was_ordered_is_what_came_plus_what_is_to_come_and_no_cent_leaks() {
        long steps = Histories.check(
                HISTORIES,
                20_261_125,
                12,
                BuyingBooks::new,
                BuyingSimulation::any,
                BuyingSimulation::after,
                BuyingSimulation::law);

        assertThat(steps).isGreaterThan(HISTORIES);
    }

    private static Step any(RandomGenerator random, BuyingBooks books) {
        if (!books.delivered.isEmpty() && random.nextInt(3) == 0) {
            int which = random.nextInt(books.delivered.size());
            List<String> keys = books.delivered.get(which).holdings().stream()
                    .filter(each -> !books.state(which, each).equals("sent back") && random.nextBoolean())
                    .map(DeliveredHolding::key)
                    .toList();
            if (!keys.isEmpty()) {
                return new Step(which, 0, 0, List.of(), keys);
            }
        }
        List<Length> lengths = new ArrayList<>();
        for (int reel = 1 + random.nextInt(5); reel > 0; reel--) {
            lengths.add(Length.ofMm(1 + random.nextInt(60_000)));
        }
        int line = random.nextInt(BuyingBooks.LINES.size());
        long units = random.nextBoolean() ? lengths.size() : random.nextInt(4);
        return new Step(-1, line, units, lengths, List.of());
    }

    private static BuyingBooks after(BuyingBooks books, Step step) {
        if (step.delivery() < 0) {
            books.deliver(BuyingBooks.LINES.get(step.line()), step.units(), step.lengths());
        } else if (step.delivery() < books.delivered.size()) {
            books.sendBack(step.delivery(), step.keys());
        }
        return books;
    }

    private static void law(BuyingBooks books) {
        long costOfReels = books.reels.values().stream()
                .mapToLong(reel -> reel.holding().costMinor())
                .sum();
        long costOfWhatStayed = 0;
        for (int which = 0; which < books.delivered.size(); which++) {
            DeliveredLine line = books.delivered.get(which);
            assertThat(line.holdings().stream()
                            .mapToLong(each -> each.cost().minor())
                            .sum())
                    .as("the reels of a line cost what the line costs")
                    .isEqualTo(line.cost().minor());
            costOfWhatStayed += stayed(books, which, line).stream()
                    .mapToLong(each -> each.cost().minor())
                    .sum();
        }
        assertThat(costOfReels).as("cost in the books = cost of what stayed").isEqualTo(costOfWhatStayed);
        books.reels
                .values()
                .forEach(reel -> assertThat(reel.holding().whereabouts().sum(kind -> true))
                        .as("all places of a reel")
                        .isZero());
        BuyingBooks.LINES.forEach(line -> lawOfLine(books, line));
    }

    private static List<DeliveredHolding> stayed(BuyingBooks books, int which, DeliveredLine line) {
        return line.holdings().stream()
                .filter(each -> !books.state(which, each).equals("sent back"))
                .toList();
    }

    /** The order's own sums against the reels that are here, counted again from the beginning. */
    private static void lawOfLine(BuyingBooks books, OrderedLine ordered) {
        long quantity = 0;
        long units = 0;
        for (int which = 0; which < books.delivered.size(); which++) {
            DeliveredLine line = books.delivered.get(which);
            if (Integer.valueOf(ordered.line()).equals(line.purchaseLine())) {
                List<DeliveredHolding> here = stayed(books, which, line);
                int gone = line.holdings().size() - here.size();
                quantity += here.stream().mapToLong(DeliveredHolding::quantity).sum();
                units += line.units() - line.unitsOf(gone);
            }
        }
        Received told = books.purchase.received().getOrDefault(ordered.line(), new Received(ordered.line(), 0, 0));
        assertThat(told.quantity()).as("received = what is here").isEqualTo(quantity);
        assertThat(told.units()).as("units received = units of what is here").isEqualTo(units);
        long remaining = ordered.remaining(told.units(), told.quantity());
        if (ordered.packing().unit().counted()) {
            assertThat(remaining)
                    .isEqualTo(ordered.packing().base(ordered.kind(), Math.max(0, ordered.units() - units)));
        } else {
            assertThat(remaining).isEqualTo(Math.max(0, ordered.ordered() - quantity));
        }
        assertThat(ordered.committed(told.units(), told.quantity())).isBetween(0L, ordered.price());
    }
}
