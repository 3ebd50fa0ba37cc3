package org.bandtrail.supplystock.audits;

import java.time.Instant;
import java.util.SplittableRandom;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;

/** A season at random: receipts, some of them late, handouts, field facts, returns, depot moves, changes of cost. */
final class RandomBooks {
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-04T10:00:00Z"));
    private static final PersonId WHO = new PersonId("RN-P");
    private static final DepotId DEPOT = new DepotId("RN-D");
    private static final Place BAG = Place.bag(new BagId("RN-BAG"));

    private final Work work;
    private final Commands commands;
    private final SplittableRandom random;
    private int granted;

    RandomBooks(Work work, Commands commands, long seed) {
        this.work = work;
        this.commands = commands;
        this.random = new SplittableRandom(seed);
    }

    /** So many steps, each a work of its own; returns how many were granted. */
    int steps(int count) {
        for (int step = 0; step < count; step++) {
            Object command = random.nextInt(4) == 0 ? ofBatch() : ofReel();
            try {
                work.inOneTransaction(() -> {
                    commands.send(command);
                    return command;
                });
                granted++;
            } catch (Refusal notGranted) {
                // a refused wish changes nothing, so the sums have to agree all the same
                granted += 0;
            }
        }
        return granted;
    }

    private Object ofReel() {
        int number = random.nextInt(1, 9);
        ReelId reel = new ReelId("RN-R" + number);
        Place tree = Place.tree(new TreeId("RN-T" + random.nextInt(1, 5)));
        Length length = Length.ofMm(random.nextLong(1, 4_000));
        SiteId site = new SiteId("RN-S" + random.nextInt(1, 3));
        return switch (random.nextInt(12)) {
            case 0 ->
                new ReelCommand.Receive(
                        reel,
                        new MaterialCode("RN-" + number % 2),
                        number % 2 == 0 ? MaterialKind.MESH : MaterialKind.TAPE,
                        Length.ofMm(random.nextLong(1, 20_000)),
                        Money.of(random.nextLong(0, 9_999), number == 6 ? "JPY" : "USD"),
                        random.nextBoolean() ? Place.bin(DEPOT, "A-1") : Place.setAside(DEPOT),
                        WHO,
                        WHEN);
            case 1, 2 -> new ReelCommand.HandOut(reel, new KitId("RN-K"), DEPOT, WHO, WHO, WHEN);
            case 3, 4, 5 -> fact(reel, Place.crew(WHO), tree, length, site);
            case 6 -> fact(reel, tree, BAG, length, site);
            case 7 -> new ReelCommand.Return(reel, WHO, DEPOT, length, WHO, WHEN);
            case 8 ->
                new ReelCommand.Relocate(
                        reel,
                        StockMove.RELEASED,
                        Place.setAside(DEPOT),
                        Place.depot(DEPOT),
                        null,
                        null,
                        null,
                        WHO,
                        WHEN);
            case 9 ->
                new ReelCommand.ChangeCost(
                        reel, CostChange.FREIGHT, Money.of(random.nextLong(1, 300), "USD"), "RN", WHO, WHEN);
            case 10 -> new ReelCommand.WriteDown(reel, Money.of(random.nextLong(1, 90), "USD"), "damp", WHO, WHEN);
            default -> depotMove(reel, length);
        };
    }

    private Object depotMove(ReelId reel, Length length) {
        return switch (random.nextInt(3)) {
            case 0 -> new ReelCommand.Slit(reel, "RN-SL", Place.depot(DEPOT), length, WHO, WHEN);
            case 1 ->
                new ReelCommand.Relocate(
                        reel, StockMove.SENT_BACK, Place.depot(DEPOT), Place.SUPPLIER, length, null, null, WHO, WHEN);
            default ->
                new ReelCommand.Relocate(
                        reel,
                        StockMove.SET_ASIDE,
                        Place.depot(DEPOT),
                        Place.setAside(DEPOT),
                        length,
                        null,
                        "torn",
                        WHO,
                        WHEN);
        };
    }

    private static ReelCommand.RecordFact fact(ReelId reel, Place from, Place to, Length length, SiteId site) {
        return new ReelCommand.RecordFact(reel, "band RN", from, to, length, site, WHO, WHEN);
    }

    private Object ofBatch() {
        BatchId batch = new BatchId("RN-B" + random.nextInt(1, 4));
        Pieces pieces = Pieces.of(random.nextLong(1, 40));
        return switch (random.nextInt(3)) {
            case 0 ->
                new BatchCommand.Receive(
                        batch,
                        new MaterialCode("RN-PIN"),
                        MaterialKind.FASTENER,
                        Pieces.of(100),
                        Money.of(random.nextLong(0, 500), "USD"),
                        Place.depot(DEPOT),
                        WHO,
                        WHEN);
            case 1 -> new BatchCommand.HandOut(batch, new KitId("RN-K"), DEPOT, WHO, pieces, WHO, WHEN);
            default ->
                new BatchCommand.RecordFact(
                        batch,
                        "band RN",
                        Place.crew(WHO),
                        Place.tree(new TreeId("RN-T1")),
                        pieces,
                        new SiteId("RN-S1"),
                        WHO,
                        WHEN);
        };
    }
}
