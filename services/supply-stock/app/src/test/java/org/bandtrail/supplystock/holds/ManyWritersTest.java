package org.bandtrail.supplystock.holds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
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
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.bandtrail.supplystock.handouts.Handouts;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Thirty-two people want the same thing at the same moment. What is granted is counted in the stored events. */
@OnPostgres
class ManyWritersTest {
    private static final int WRITERS = 32;
    private static final DepotId DEPOT = new DepotId("MW");
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private static final Occurred NOW = Occurred.at(NOON);

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Handouts handouts;

    @Autowired
    JdbcClient jdbc;

    @Test
    void one_reel_is_reserved_for_one_kit() throws Exception {
        HeldId reel = HeldId.reel(received("MW-R1"));

        assertThat(granted(writer -> commands.send(new HoldCommand.Place(
                        reel, new KitId("MW-A" + writer), DEPOT, 50_000, 50_000, NOON.plusSeconds(60), KEEPER, NOW))))
                .isOne();
        assertThat(events("hold/" + reel, "hold.placed")).isOne();
    }

    @Test
    void one_reel_goes_out_once_and_only_in_the_kit_it_is_reserved_for() throws Exception {
        ReelId reel = received("MW-R2");
        work.inOneTransaction(() -> {
            commands.send(new HoldCommand.Place(
                    HeldId.reel(reel), new KitId("MW-B7"), DEPOT, 50_000, 50_000, NOON.plusSeconds(60), KEEPER, NOW));
            return true;
        });

        assertThat(granted(writer -> handOut("MW-B" + writer, List.of(reel), List.of())))
                .isOne();
        assertThat(events("reel/MW-R2", "reel.handed-out")).isOne();
        assertThat(events("kit/MW-B7", "kit.handed-out")).isOne();
    }

    @Test
    void pieces_of_one_batch_are_never_promised_twice() throws Exception {
        BatchId batch = new BatchId("MW-F1");
        work.inOneTransaction(() -> {
            commands.send(new BatchCommand.Receive(
                    batch,
                    new MaterialCode("MW-PIN"),
                    MaterialKind.FASTENER,
                    Pieces.of(100),
                    Money.of(500, "USD"),
                    Place.depot(DEPOT),
                    KEEPER,
                    NOW));
            return true;
        });

        int granted = granted(writer -> commands.send(new HoldCommand.Place(
                HeldId.batch(batch), new KitId("MW-C" + writer), DEPOT, 9, 100, NOON.plusSeconds(60), KEEPER, NOW)));

        assertThat(granted).as("11 x 9 = 99 of 100 pieces").isEqualTo(11);
        assertThat(events("hold/batch:MW-F1", "hold.placed")).isEqualTo(11);
        assertThat(granted(writer ->
                        handOut("MW-D" + writer, List.of(), List.of(new OldestFirst.Pick(batch, Pieces.of(2))))))
                .as("only one piece is free")
                .isZero();
    }

    private void handOut(String kit, List<ReelId> reels, List<OldestFirst.Pick> batches) {
        handouts.handOut(
                new Handouts.KitWish(
                        new KitId(kit), DEPOT, new CrewId("C-1"), new PersonId("P-2"), reels, batches, List.of()),
                KEEPER,
                NOW);
    }

    private ReelId received(String id) {
        ReelId reel = new ReelId(id);
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.Receive(
                    reel,
                    new MaterialCode("MW-TAPE"),
                    MaterialKind.TAPE,
                    Length.ofMm(50_000),
                    Money.of(1_800, "USD"),
                    Place.depot(DEPOT),
                    KEEPER,
                    NOW));
            return true;
        });
        return reel;
    }

    private int granted(IntConsumer wish) throws Exception {
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<Boolean>> answers = IntStream.range(0, WRITERS)
                    .mapToObj(writer -> threads.submit(() -> granted(wish, writer)))
                    .toList();
            int granted = 0;
            for (Future<Boolean> answer : answers) {
                granted += answer.get() ? 1 : 0;
            }
            return granted;
        }
    }

    private boolean granted(IntConsumer wish, int writer) {
        try {
            return work.inOneTransaction(() -> {
                wish.accept(writer);
                return true;
            });
        } catch (Refusal refused) {
            return false;
        }
    }

    private long events(String aggregate, String name) {
        return jdbc.sql("SELECT count(*) FROM domain_event_entry WHERE aggregate_identifier = ? AND payload_type = ?")
                .params(aggregate, name)
                .query(Long.class)
                .single();
    }
}
