package org.bandtrail.benchmark;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.springframework.context.ApplicationContext;

/** Many writers wish for a metre of the same reel at once: as many are granted as there are metres, not one more. */
final class ManyWriters {
    static final int WRITERS = 32;
    private static final int METRES = 100;
    private static final int WISHES_EACH = 6;
    private static final PersonId WHO = new PersonId("P-BENCH");
    private static final DepotId DEPOT = new DepotId("D-MANY");
    private static final Occurred WHEN = Occurred.at(Instant.EPOCH);

    private final Work work;
    private final Commands commands;
    private int round;

    ManyWriters(ApplicationContext supplyStock) {
        this.work = supplyStock.getBean(Work.class);
        this.commands = supplyStock.getBean(Commands.class);
    }

    /**
     * One round on a fresh reel; says how many wishes were granted and how fast they were decided.
     *
     * @throws IllegalStateException if more or fewer were granted than there are metres
     */
    String round() throws Exception {
        ReelId reel = new ReelId("R-MANY-" + round++);
        send(new ReelCommand.Receive(
                reel,
                new MaterialCode("TAPE-B"),
                MaterialKind.TAPE,
                Length.ofMm(METRES * 1_000L),
                Money.of(3_600, "USD"),
                Place.depot(DEPOT),
                WHO,
                WHEN));
        long begin = System.nanoTime();
        long granted = 0;
        try (ExecutorService pool = Executors.newFixedThreadPool(WRITERS)) {
            List<Future<Integer>> writers = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                writers.add(pool.submit(() -> wishes(reel)));
            }
            for (Future<Integer> writer : writers) {
                granted += writer.get();
            }
        }
        double seconds = (System.nanoTime() - begin) / 1e9;
        if (granted != METRES) {
            throw new IllegalStateException(
                    "%d metres were granted of a reel of %d metres.".formatted(granted, METRES));
        }
        return "%d writers wished %d times for a metre of one reel of %d m: %d granted, %.0f decided per s"
                .formatted(WRITERS, WRITERS * WISHES_EACH, METRES, granted, WRITERS * WISHES_EACH / seconds);
    }

    private int wishes(ReelId reel) {
        int granted = 0;
        for (int wish = 0; wish < WISHES_EACH; wish++) {
            try {
                send(new ReelCommand.Relocate(
                        reel,
                        StockMove.LOADED,
                        Place.depot(DEPOT),
                        Place.vehicle("V-MANY"),
                        Length.ofMm(1_000),
                        null,
                        null,
                        WHO,
                        WHEN));
                granted++;
            } catch (Refusal nothingLeft) {
                // That wish came when the reel was empty; it is what the round counts.
                granted += 0;
            }
        }
        return granted;
    }

    private void send(ReelCommand command) {
        work.inOneTransaction(() -> {
            commands.send(command);
            return command;
        });
    }
}
