package org.bandtrail.supplystock.counts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.counts.CountSamples.*;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Holding;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.junit.jupiter.api.Test;

/** Random shelves, random figures: after the approval the books have what was counted, and nothing came from nowhere. */
class CountLawTest {
    private static final int SHELVES = 3_000;
    private static final List<Place> PLACES = List.of(NORTH, BIN, OTHER_BIN);

    @Test
    void after_the_approval_the_books_have_what_was_counted_and_length_and_money_are_conserved() {
        int posted = 0;
        for (long seed = 1; seed <= SHELVES; seed++) {
            posted += oneShelf(seed);
        }
        assertThat(posted).as("postings over all shelves").isGreaterThan(SHELVES);
    }

    private static int oneShelf(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, Reel> reels = shelf(random);
        Place scope = random.nextBoolean() ? NORTH : BIN;
        Map<SheetLine, Long> figures = figures(reels, scope, random);
        CountEvent.Approved approved = counted(scope, figures);

        Map<String, Long> costBefore = new HashMap<>();
        reels.forEach((id, reel) -> costBefore.put(id, reel.holding().costInStock()));
        for (Object command : PostedDifferences.commands(approved)) {
            String id = reelOf((ReelCommand) command);
            reels.compute(id, (same, reel) -> next(reel, (ReelCommand) command));
        }

        figures.forEach((line, figure) -> assertThat(
                        Objects.requireNonNull(reels.get(line.id())).holding().at(line.place()))
                .as("seed %d, %s", seed, line.key())
                .isEqualTo(figure));
        reels.forEach((id, reel) -> law(reel.holding(), Objects.requireNonNull(costBefore.get(id)), seed));
        return approved.postings().size();
    }

    private static void law(Holding holding, long costBefore, long seed) {
        assertThat(holding.whereabouts().sum(kind -> true)).as("seed %d", seed).isZero();
        long writtenOff = holding.whereabouts().sum(kind -> kind == PlaceKind.WRITTEN_OFF);
        assertThat(costBefore - holding.costInStock())
                .as("seed %d, cost leaves stock only with what is written off", seed)
                .isBetween(0L, writtenOff == 0 ? 0L : holding.costMinor());
    }

    /** Two to five reels, each in a place of the depot or with a person. */
    private static Map<String, Reel> shelf(RandomGenerator random) {
        Map<String, Reel> reels = new LinkedHashMap<>();
        int many = 2 + random.nextInt(4);
        for (int i = 0; i < many; i++) {
            String id = "R-" + i;
            Place place = PLACES.get(random.nextInt(PLACES.size()));
            Reel reel = next(Reel.UNKNOWN, received(id, place, 1_000 + random.nextInt(60_000)));
            reels.put(id, random.nextInt(4) == 0 ? next(reel, out(id)) : reel);
        }
        return reels;
    }

    /** What is really there: often as the books say, else less, more, nothing, or something the books have elsewhere. */
    private static Map<SheetLine, Long> figures(Map<String, Reel> reels, Place scope, RandomGenerator random) {
        Map<SheetLine, Long> figures = new LinkedHashMap<>();
        reels.forEach((id, reel) -> reel.holding().whereabouts().balances().forEach((place, balance) -> {
            if (Counting.within(scope, place)) {
                long there = random.nextInt(3) == 0 ? random.nextInt(60_000) : random.nextInt(4) == 0 ? 0 : balance;
                figures.put(line(id, reel, place, balance, null, 0), there);
                if (random.nextInt(4) == 0 && scope.equals(NORTH)) {
                    Place other = PLACES.stream()
                            .filter(each -> !each.equals(place))
                            .findFirst()
                            .orElseThrow();
                    figures.put(line(id, reel, other, 0, null, 0), 1L + random.nextInt(60_000));
                }
            } else if (balance > 0 && random.nextInt(3) == 0) {
                figures.put(line(id, reel, scope, 0, place, balance), 1L + random.nextInt(60_000));
            }
        }));
        return figures;
    }

    private static SheetLine line(
            String id,
            Reel reel,
            Place place,
            long book,
            @org.jspecify.annotations.Nullable Place elsewhere,
            long there) {
        Holding holding = reel.holding();
        return new SheetLine(
                "reel",
                id,
                place,
                "TAPE-127",
                "TAPE",
                book,
                holding.bought(),
                holding.costMinor(),
                "USD",
                elsewhere,
                there);
    }

    /** Counted by one, counted again by another, explained, approved by a third. */
    private static CountEvent.Approved counted(Place scope, Map<SheetLine, Long> figures) {
        List<SheetLine> sheet =
                figures.keySet().stream().filter(line -> line.book() != 0).toList();
        Count count = CountSamples.after(open(scope, sheet.toArray(SheetLine[]::new)));
        for (Map.Entry<SheetLine, Long> figure : figures.entrySet()) {
            SheetLine line = figure.getKey();
            count = CountSamples.next(count, enter(line, line.place(), figure.getValue(), false, WREN));
        }
        count = CountSamples.next(count, finish(false));
        for (SheetLine.Key key : new ArrayList<>(count.again())) {
            SheetLine line = Objects.requireNonNull(count.lines().get(key)).sheet();
            count = CountSamples.next(
                    count, enter(line, line.place(), Objects.requireNonNull(figures.get(line)), false, FINN));
        }
        if (count.stage() == Count.Stage.COUNTING) {
            count = CountSamples.next(count, finish(false));
        }
        for (CountLine line : List.copyOf(count.lines().values())) {
            count = line.difference() == 0 ? count : CountSamples.next(count, because(line.sheet(), "looked"));
        }
        return (CountEvent.Approved) count.decide(approve(LEAD)).getFirst();
    }

    private static ReelCommand received(String id, Place into, long mm) {
        return new ReelCommand.Receive(
                new ReelId(id),
                new MaterialCode("TAPE-127"),
                MaterialKind.TAPE,
                Length.ofMm(mm),
                Money.of(1_800, "USD"),
                into,
                LEAD,
                NOW);
    }

    private static ReelCommand out(String id) {
        return new ReelCommand.HandOut(
                new ReelId(id), new KitId("K-1"), new DepotId("NORTH"), new PersonId("P-09"), LEAD, NOW);
    }

    private static Reel next(Reel reel, ReelCommand command) {
        Reel next = reel;
        for (ReelEvent event : reel.decide(command)) {
            next = next.evolve(event);
        }
        return next;
    }

    private static String reelOf(ReelCommand command) {
        return switch (command) {
            case ReelCommand.Adjust adjust -> adjust.reelId().value();
            case ReelCommand.Relocate relocate -> relocate.reelId().value();
            case ReelCommand.Return back -> back.reelId().value();
            default -> throw new IllegalStateException("A count does not ask for " + command);
        };
    }
}
