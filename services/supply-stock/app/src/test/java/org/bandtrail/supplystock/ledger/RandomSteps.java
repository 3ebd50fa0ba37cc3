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
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;

/** One random step after the other; a wish that the rules refuse is no step. */
final class RandomSteps {
    static final String REASON = "as counted";
    private final LedgerHistories history;
    private final SplittableRandom random;
    private final RandomReelSteps reels;
    private final RandomBatchSteps batches;
    private YearMonth open = YearMonth.of(2026, 1);

    /** Wishes that were not granted; a refusal changes nothing. */
    int refused;

    RandomSteps(LedgerHistories history, SplittableRandom random) {
        this.history = history;
        this.random = random;
        this.reels = new RandomReelSteps(history, random, this);
        this.batches = new RandomBatchSteps(history, random, this);
    }

    void step() {
        history.later(Duration.ofHours(random.nextInt(1, 96)), Duration.ofHours(random.nextInt(0, 2_000)));
        try {
            if (random.nextInt(25) == 0) {
                month();
            } else if (random.nextBoolean()) {
                reels.step();
            } else {
                batches.step();
            }
        } catch (Refusal refusal) {
            refused++;
        }
    }

    private void month() {
        YearMonth running = YearMonth.from(history.when().recorded().atOffset(ZoneOffset.UTC));
        if (random.nextInt(4) == 0) {
            history.policy(
                    running.getYear(), random.nextBoolean() ? CostMethod.OLDEST_FIRST : CostMethod.MOVING_AVERAGE);
        } else if (open.isBefore(running)) {
            history.close(open.toString());
            open = open.plusMonths(1);
        } else if (open.isAfter(YearMonth.of(2026, 2))) {
            history.reopen(open.minusMonths(1).toString(), open.minusMonths(2).toString());
            open = open.minusMonths(1);
        }
    }

    Place anywhere() {
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

    Place[] fieldMove() {
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

    Place unsettled() {
        return List.of(Place.missing(ANNA), Place.crew(ANNA), Place.crew(KEEPER), Place.tree(new TreeId("T-1")))
                .get(random.nextInt(4));
    }

    StockMove stockMove() {
        return StockMove.values()[random.nextInt(StockMove.values().length)];
    }

    CostChange costChange() {
        return List.of(CostChange.INVOICE_DIFFERENCE, CostChange.CREDIT, CostChange.FREIGHT, CostChange.DUTY)
                .get(random.nextInt(4));
    }
}
