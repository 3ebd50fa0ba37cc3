package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.LedgerHistories.ANNA;
import static org.bandtrail.supplystock.ledger.LedgerHistories.DEPOT;
import static org.bandtrail.supplystock.ledger.LedgerHistories.KEEPER;

import java.time.Duration;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;

/** One random step after the other; a wish that the rules refuse is no step. */
final class RandomSteps {
    private static final String REASON = "as counted";
    private final LedgerHistories history;
    private final SplittableRandom random;
    private int strips;
    private YearMonth open = YearMonth.of(2026, 1);

    /** Wishes that were not granted; a refusal changes nothing. */
    int refused;

    RandomSteps(LedgerHistories history, SplittableRandom random) {
        this.history = history;
        this.random = random;
    }

    void step() {
        history.later(Duration.ofHours(random.nextInt(1, 96)), Duration.ofHours(random.nextInt(0, 2_000)));
        try {
            if (random.nextInt(25) == 0) {
                month();
            } else if (random.nextBoolean()) {
                reel();
            } else {
                batch();
            }
        } catch (Refusal refusal) {
            refused++;
        }
    }

    private void month() {
        YearMonth running = YearMonth.from(history.when().recorded().atOffset(ZoneOffset.UTC));
        if (random.nextInt(4) == 0) {
            history.policy(running.getYear(), random.nextBoolean() ? CostMethod.OLDEST_FIRST : CostMethod.MOVING_AVERAGE);
        } else if (open.isBefore(running)) {
            history.close(open.toString());
            open = open.plusMonths(1);
        } else if (open.isAfter(YearMonth.of(2026, 2))) {
            history.reopen(open.minusMonths(1).toString(), open.minusMonths(2).toString());
            open = open.minusMonths(1);
        }
    }

    private Place anywhere() {
        return List.of(
                        Place.depot(DEPOT),
                        Place.bin(DEPOT, "A-1"),
                        Place.setAside(DEPOT),
                        Place.vehicle("V-1"),
                        Place.inTransit("X-1"),
                        Place.crew(ANNA),
                        Place.crew(KEEPER),
                        Place.SUPPLIER)
                .get(random.nextInt(8));
    }

    private Place[] fieldMove() {
        Place crew = Place.crew(random.nextBoolean() ? ANNA : KEEPER);
        Place tree = Place.tree(new TreeId("T-" + random.nextInt(1, 4)));
        Place bag = Place.bag(new BagId("BAG-1"));
        return switch (random.nextInt(6)) {
            case 0, 1, 2 -> new Place[] {crew, tree};
            case 3 -> new Place[] {tree, bag};
            case 4 -> new Place[] {tree, crew};
            default -> new Place[] {crew, bag};
        };
    }

    private Place unsettled() {
        return List.of(Place.missing(ANNA), Place.crew(ANNA), Place.crew(KEEPER), Place.tree(new TreeId("T-1")))
                .get(random.nextInt(4));
    }

    private StockMove stockMove() {
        return StockMove.values()[random.nextInt(StockMove.values().length)];
    }

    private CostChange costChange() {
        return List.of(CostChange.INVOICE_DIFFERENCE, CostChange.CREDIT, CostChange.FREIGHT, CostChange.DUTY)
                .get(random.nextInt(4));
    }

    private static MaterialCode item(int number) {
        return new MaterialCode(number % 2 == 0 ? "MESH-1" : "TAPE-1");
    }

    private void reel() {
        int number = random.nextInt(1, 6);
        ReelId id = new ReelId("R-" + number);
        Length some = Length.ofMm(random.nextLong(1, 3_000));
        SiteId site = new SiteId("S-" + random.nextInt(1, 3));
        Place into = random.nextBoolean() ? Place.depot(DEPOT) : Place.setAside(DEPOT);
        var when = history.when();
        String currency = number == 5 ? "JPY" : "USD";
        switch (random.nextInt(12)) {
            case 0 -> {
                MaterialKind kind = number % 2 == 0 ? MaterialKind.MESH : MaterialKind.TAPE;
                Money cost = Money.of(random.nextLong(0, 9_999), currency);
                Length length = Length.ofMm(random.nextLong(1, 20_000));
                history.decide(id, new ReelCommand.Receive(id, item(number), kind, length, cost, into, KEEPER, when));
            }
            case 1, 2 -> history.decide(id, new ReelCommand.HandOut(id, new KitId("K-1"), DEPOT, ANNA, KEEPER, when));
            case 3, 4, 5 -> {
                Place[] move = fieldMove();
                history.decide(id, new ReelCommand.RecordFact(id, "fact", move[0], move[1], some, site, ANNA, when));
            }
            case 6 -> history.decide(id, new ReelCommand.Return(id, ANNA, DEPOT, some, KEEPER, when));
            case 7 -> history.decide(id, new ReelCommand.Settle(id, unsettled(), REASON, KEEPER, when));
            case 8 ->
                history.decide(
                        id,
                        new ReelCommand.Relocate(
                                id, stockMove(), anywhere(), anywhere(), random.nextBoolean() ? null : some, null, null,
                                KEEPER, when));
            case 9 -> {
                Money delta = Money.of(random.nextLong(-900, 900), currency);
                history.decide(id, new ReelCommand.ChangeCost(id, costChange(), delta, "I-1", KEEPER, when));
            }
            case 10 -> {
                Money amount = Money.of(random.nextLong(1, 300), currency);
                history.decide(id, new ReelCommand.WriteDown(id, amount, REASON, KEEPER, when));
            }
            default -> slit(id, some, currency);
        }
    }

    /** The wide length becomes two strips, which take its cost along. */
    private void slit(ReelId wide, Length length, String currency) {
        String slitting = "SL-" + strips;
        var when = history.when();
        ReelEvent slit = history.decide(
                        wide, new ReelCommand.Slit(wide, slitting, Place.depot(DEPOT), length, KEEPER, when))
                .getFirst();
        long cost = slit.entry().charges().getFirst().minor();
        for (long part : new long[] {cost / 3, cost - cost / 3}) {
            ReelId strip = new ReelId("N-" + strips++);
            MaterialCode narrow = new MaterialCode("TAPE-40");
            history.decide(
                    strip,
                    new ReelCommand.MakeBySlitting(
                            strip, narrow, MaterialKind.TAPE, length, Money.of(part, currency), slitting,
                            Place.depot(DEPOT), KEEPER, when));
        }
    }

    private void batch() {
        int number = random.nextInt(1, 7);
        BatchId id = new BatchId("F-" + number);
        MaterialCode pin = new MaterialCode(number < 5 ? "PIN" : "TACK");
        Pieces some = Pieces.of(random.nextLong(1, 60));
        SiteId site = new SiteId("S-" + random.nextInt(1, 3));
        var when = history.when();
        switch (random.nextInt(11)) {
            case 0, 1 -> {
                Money cost = Money.of(random.nextLong(0, 999), "USD");
                Pieces bought = Pieces.of(random.nextLong(1, 200));
                history.decide(
                        id,
                        new BatchCommand.Receive(
                                id, pin, MaterialKind.FASTENER, bought, cost, Place.depot(DEPOT), KEEPER, when));
            }
            case 2, 3 -> history.decide(id, new BatchCommand.HandOut(id, new KitId("K-1"), DEPOT, ANNA, some, KEEPER, when));
            case 4, 5 -> {
                Place[] move = fieldMove();
                history.decide(id, new BatchCommand.RecordFact(id, "fact", move[0], move[1], some, site, ANNA, when));
            }
            case 6 -> history.decide(id, new BatchCommand.Return(id, ANNA, DEPOT, some, KEEPER, when));
            case 7 -> history.decide(id, new BatchCommand.Settle(id, unsettled(), REASON, KEEPER, when));
            case 8 ->
                history.decide(
                        id,
                        new BatchCommand.Relocate(
                                id, stockMove(), anywhere(), anywhere(), random.nextBoolean() ? null : some, null, null,
                                KEEPER, when));
            case 9 -> {
                Money delta = Money.of(random.nextLong(-200, 200), "USD");
                history.decide(id, new BatchCommand.ChangeCost(id, costChange(), delta, "I-1", KEEPER, when));
            }
            default -> {
                Money amount = Money.of(random.nextLong(1, 100), "USD");
                history.decide(id, new BatchCommand.WriteDown(id, amount, REASON, KEEPER, when));
            }
        }
    }
}
