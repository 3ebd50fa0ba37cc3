package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.LedgerHistories.ANNA;
import static org.bandtrail.supplystock.ledger.LedgerHistories.DEPOT;
import static org.bandtrail.supplystock.ledger.LedgerHistories.KEEPER;

import java.util.SplittableRandom;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;

/** Anything that can happen to one of six batches of two items. */
final class RandomBatchSteps {
    private final LedgerHistories history;
    private final SplittableRandom random;
    private final RandomSteps any;

    RandomBatchSteps(LedgerHistories history, SplittableRandom random, RandomSteps any) {
        this.history = history;
        this.random = random;
        this.any = any;
    }

    void step() {
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
            case 2, 3 ->
                history.decide(id, new BatchCommand.HandOut(id, new KitId("K-1"), DEPOT, ANNA, some, KEEPER, when));
            case 4, 5 -> {
                Place[] move = any.fieldMove();
                history.decide(id, new BatchCommand.RecordFact(id, "fact", move[0], move[1], some, site, ANNA, when));
            }
            case 6 -> history.decide(id, new BatchCommand.Return(id, ANNA, DEPOT, some, KEEPER, when));
            case 7 ->
                history.decide(id, new BatchCommand.Settle(id, any.unsettled(), RandomSteps.REASON, KEEPER, when));
            case 8 ->
                history.decide(
                        id,
                        new BatchCommand.Relocate(
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
                Money delta = Money.of(random.nextLong(-200, 200), "USD");
                history.decide(id, new BatchCommand.ChangeCost(id, any.costChange(), delta, "I-1", KEEPER, when));
            }
            default -> {
                Money amount = Money.of(random.nextLong(1, 100), "USD");
                history.decide(id, new BatchCommand.WriteDown(id, amount, RandomSteps.REASON, KEEPER, when));
            }
        }
    }
}
