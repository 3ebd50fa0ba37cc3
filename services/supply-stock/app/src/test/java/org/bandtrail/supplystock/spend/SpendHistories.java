package org.bandtrail.supplystock.spend;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.reels.ReelRefused;

/** Histories of reels as the store would hand them to the projection: decided by the rules, numbered in order. */
final class SpendHistories {
    static final PersonId WHO = new PersonId("P-1");
    static final DepotId DEPOT = new DepotId("D-1");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-04T10:00:00Z"));

    private final Map<ReelId, Reel> reels = new HashMap<>();
    private final List<StoredEvent> events = new ArrayList<>();

    List<StoredEvent> events() {
        return List.copyOf(events);
    }

    /** Adds an event that was not decided here, for example one of a batch. */
    void add(Object event) {
        long position = events.size() + 1L;
        events.add(new StoredEvent(position, new UUID(7, position), "any/1", position, event));
    }

    void decide(ReelId id, ReelCommand command) {
        Reel reel = reels.getOrDefault(id, Reel.UNKNOWN);
        for (ReelEvent event : reel.decide(command)) {
            reel = reel.evolve(event);
            add(event);
        }
        reels.put(id, reel);
    }

    SpendHistories receive(String reel, MaterialKind kind, long mm, long minor, String currency) {
        ReelId id = new ReelId(reel);
        decide(
                id,
                new ReelCommand.Receive(
                        id,
                        new MaterialCode(kind + "-1"),
                        kind,
                        Length.ofMm(mm),
                        Money.of(minor, currency),
                        Place.depot(DEPOT),
                        WHO,
                        WHEN));
        return this;
    }

    SpendHistories handOut(String reel) {
        ReelId id = new ReelId(reel);
        decide(id, new ReelCommand.HandOut(id, new KitId("K-1"), DEPOT, WHO, WHO, WHEN));
        return this;
    }

    SpendHistories fit(String reel, long mm, String tree, String site) {
        return fact(reel, Place.crew(WHO), Place.tree(new TreeId(tree)), mm, site);
    }

    SpendHistories fact(String reel, Place source, Place target, long mm, String site) {
        ReelId id = new ReelId(reel);
        decide(
                id,
                new ReelCommand.RecordFact(
                        id, "fact-" + events.size(), source, target, Length.ofMm(mm), new SiteId(site), WHO, WHEN));
        return this;
    }

    SpendHistories comeBack(String reel, long measuredMm) {
        ReelId id = new ReelId(reel);
        decide(id, new ReelCommand.Return(id, WHO, DEPOT, Length.ofMm(measuredMm), WHO, WHEN));
        return this;
    }

    SpendHistories settle(String reel, Place place) {
        ReelId id = new ReelId(reel);
        decide(id, new ReelCommand.Settle(id, place, "counted twice", WHO, WHEN));
        return this;
    }

    /** A history of several reels in two currencies, late receipts and contradictions included. */
    static SpendHistories random(long seed, int steps) {
        SplittableRandom random = new SplittableRandom(seed);
        SpendHistories history = new SpendHistories();
        for (int step = 0; step < steps; step++) {
            try {
                history.anyStep(random);
            } catch (ReelRefused refused) {
                history.refused++;
            }
        }
        return history;
    }

    /** Wishes the rules did not grant; a refusal changes nothing. */
    int refused;

    private void anyStep(SplittableRandom random) {
        int number = random.nextInt(1, 7);
        String reel = "R-" + number;
        String tree = "T-" + random.nextInt(1, 5);
        String site = "S-" + random.nextInt(1, 4);
        Place bag = Place.bag(new BagId("BAG-1"));
        Place onTree = Place.tree(new TreeId(tree));
        long mm = random.nextLong(1, 4_000);
        switch (random.nextInt(8)) {
            case 0 ->
                receive(
                        reel,
                        number % 2 == 0 ? MaterialKind.MESH : MaterialKind.TAPE,
                        random.nextLong(1, 20_000),
                        random.nextLong(0, 9_999),
                        number == 6 ? "JPY" : "USD");
            case 1 -> handOut(reel);
            case 2, 3 -> fit(reel, mm, tree, site);
            case 4 -> fact(reel, onTree, bag, mm, site);
            case 5 -> fact(reel, onTree, Place.crew(WHO), mm, site);
            case 6 -> comeBack(reel, mm);
            default -> settle(reel, random.nextBoolean() ? Place.missing(WHO) : onTree);
        }
    }
}
