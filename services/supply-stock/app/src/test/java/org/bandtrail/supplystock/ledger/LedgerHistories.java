package org.bandtrail.supplystock.ledger;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.Batch;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.costpolicies.CostPolicyEvent;
import org.bandtrail.supplystock.costpolicies.CostPolicyId;
import org.bandtrail.supplystock.periods.BooksId;
import org.bandtrail.supplystock.periods.PeriodEvent;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/** Histories as the store would hand them on: decided by the rules, numbered in order, months closed between them. */
public final class LedgerHistories {
    static final PersonId KEEPER = new PersonId("P-01");
    static final PersonId ANNA = new PersonId("P-07");
    static final DepotId DEPOT = new DepotId("NORTH");
    static final Instant START = Instant.parse("2026-01-05T08:00:00Z");

    private final Map<ReelId, Reel> reels = new HashMap<>();
    private final Map<BatchId, Batch> batches = new HashMap<>();
    private final List<StoredEvent> events = new ArrayList<>();
    private Instant now = START;
    private Occurred when = Occurred.at(START);

    /** The events, in the order of the store. */
    public List<StoredEvent> events() {
        return List.copyOf(events);
    }

    /** The books' clock goes on, and the next facts happened some time before it. */
    LedgerHistories later(Duration step, Duration told) {
        now = now.plus(step);
        when = new Occurred(now.minus(told), now);
        return this;
    }

    Occurred when() {
        return when;
    }

    Reel reel(ReelId id) {
        return reels.getOrDefault(id, Reel.UNKNOWN);
    }

    Batch batch(BatchId id) {
        return batches.getOrDefault(id, Batch.UNKNOWN);
    }

    List<ReelEvent> decide(ReelId id, ReelCommand command) {
        Reel reel = reel(id);
        List<ReelEvent> decided = reel.decide(command);
        for (ReelEvent event : decided) {
            reel = reel.evolve(event);
            add(event);
        }
        reels.put(id, reel);
        return decided;
    }

    List<BatchEvent> decide(BatchId id, BatchCommand command) {
        Batch batch = batch(id);
        List<BatchEvent> decided = batch.decide(command);
        for (BatchEvent event : decided) {
            batch = batch.evolve(event);
            add(event);
        }
        batches.put(id, batch);
        return decided;
    }

    LedgerHistories close(String month) {
        add(new PeriodEvent.Closed(BooksId.MAIN, YearMonth.parse(month), List.of(), KEEPER, when));
        return this;
    }

    LedgerHistories reopen(String month, @Nullable String before) {
        YearMonth through = before == null ? null : YearMonth.parse(before);
        add(new PeriodEvent.Reopened(
                BooksId.MAIN, YearMonth.parse(month), through, "late invoice", KEEPER, ANNA, when));
        return this;
    }

    LedgerHistories policy(int year, CostMethod method) {
        add(new CostPolicyEvent.Set(CostPolicyId.FASTENERS, year, method, "for this test", KEEPER, when));
        return this;
    }

    private void add(Object event) {
        long position = events.size() * 3L + 1;
        events.add(new StoredEvent(position, new UUID(7, position), "any/1", position, event));
    }

    /** A history in which everything happens that can happen, in any order. */
    public static LedgerHistories random(long seed, int steps) {
        SplittableRandom random = new SplittableRandom(seed);
        LedgerHistories history = new LedgerHistories();
        RandomSteps any = new RandomSteps(history, random);
        for (int step = 0; step < steps; step++) {
            any.step();
        }
        return history;
    }
}
