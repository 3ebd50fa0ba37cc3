package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.LedgerHistories.ANNA;
import static org.bandtrail.supplystock.ledger.LedgerHistories.DEPOT;
import static org.bandtrail.supplystock.ledger.LedgerHistories.KEEPER;

import java.util.SplittableRandom;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;

/** Anything that can happen to one of five reels, or to the strips that one of them becomes. */
final class RandomReelSteps {
    private final LedgerHistories history;
    private final SplittableRandom random;
    private final RandomSteps any;
    private int strips;

    RandomReelSteps(LedgerHistories history, SplittableRandom random, RandomSteps any) {
        this.history = history;
        this.random = random;
        this.any = any;
    }

    private static MaterialCode item(int number) {
        return new MaterialCode(number % 2 == 0 ? "MESH-1" : "TAPE-1");
    }

    void step() {
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
                Place[] move = any.fieldMove();
                history.decide(id, new ReelCommand.RecordFact(id, "fact", move[0], move[1], some, site, ANNA, when));
            }
            case 6 -> history.decide(id, new ReelCommand.Return(id, ANNA, DEPOT, some, KEEPER, when));
            case 7 -> history.decide(id, new ReelCommand.Settle(id, any.unsettled(), RandomSteps.REASON, KEEPER, when));
            case 8 ->
                history.decide(
                        id,
                        new ReelCommand.Relocate(
                                id,
                                any.stockMove(),
                                any.anywhere(),
                                any.anywhere(),
                                random.nextBoolean() ? null : some,
                                null,
                                null,
                                KEEPER,
                                when));
            case 9 -> {
                Money delta = Money.of(random.nextLong(-900, 900), currency);
                history.decide(id, new ReelCommand.ChangeCost(id, any.costChange(), delta, "I-1", KEEPER, when));
            }
            case 10 -> {
                Money amount = Money.of(random.nextLong(1, 300), currency);
                history.decide(id, new ReelCommand.WriteDown(id, amount, RandomSteps.REASON, KEEPER, when));
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
                            strip,
                            narrow,
                            MaterialKind.TAPE,
                            length,
                            Money.of(part, currency),
                            slitting,
                            Place.depot(DEPOT),
                            KEEPER,
                            when));
        }
    }
}
