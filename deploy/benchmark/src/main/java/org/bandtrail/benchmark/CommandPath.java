package org.bandtrail.benchmark;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
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
import org.bandtrail.supplystock.reels.ReelCommand;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One row inserted and committed by hand, against one command decided, stored and committed by the event store. */
final class CommandPath {
    private static final PersonId WHO = new PersonId("P-BENCH");
    private static final int REELS = 64;
    private static final byte[] PAYLOAD =
            "{\"reelId\":\"R-B1\",\"fact\":\"band B-1\",\"entry\":{\"moves\":[{\"source\":\"crew:P-BENCH\",\"target\":\"tree:T-1\"}]}}"
                    .repeat(3)
                    .getBytes(StandardCharsets.UTF_8);

    private final Work work;
    private final Commands commands;
    private final DataSource dataSource;
    private final AtomicLong next = new AtomicLong();

    CommandPath(ApplicationContext supplyStock) {
        this.work = supplyStock.getBean(Work.class);
        this.commands = supplyStock.getBean(Commands.class);
        this.dataSource = supplyStock.getBean(DataSource.class);
        JdbcClient.create(dataSource).sql("""
                CREATE TABLE IF NOT EXISTS raw_event (position bigserial PRIMARY KEY, event_identifier uuid NOT NULL,
                    aggregate_identifier varchar(64) NOT NULL, sequence_number bigint NOT NULL, type varchar(40) NOT NULL,
                    payload_type varchar(80) NOT NULL, payload_revision varchar(8) NOT NULL, payload bytea NOT NULL,
                    meta_data bytea NOT NULL, time_stamp varchar(40) NOT NULL,
                    UNIQUE (aggregate_identifier, sequence_number))""").update();
        for (int reel = 0; reel < REELS; reel++) {
            ReelId id = reel(reel);
            work.inOneTransaction(() -> {
                commands.send(new ReelCommand.Receive(
                        id,
                        new MaterialCode("TAPE-B"),
                        MaterialKind.TAPE,
                        Length.ofMm(10_000_000),
                        Money.of(100_000, "USD"),
                        Place.depot(new DepotId("D-B")),
                        WHO,
                        Occurred.at(Instant.EPOCH)));
                return id;
            });
        }
    }

    private static ReelId reel(long number) {
        return new ReelId("R-B" + number % REELS);
    }

    /** Both ways with so many threads; each turn does so many commits a thread. */
    Interleaved.Result measure(int threads, int commitsEach, int turns) throws Exception {
        return new Interleaved(turns)
                .compare(
                        "commit of one event, %d thread%s (per s)".formatted(threads, threads == 1 ? "" : "s"),
                        () -> inThreads(threads, () -> raw(commitsEach)),
                        () -> inThreads(threads, () -> ours(commitsEach)));
    }

    private long raw(int commits) throws Exception {
        try (Connection connection = dataSource.getConnection()) {
            connection.setAutoCommit(false);
            try (PreparedStatement insert = connection.prepareStatement("""
                    INSERT INTO raw_event (event_identifier, aggregate_identifier, sequence_number, type, payload_type,
                        payload_revision, payload, meta_data, time_stamp) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)""")) {
                for (int i = 0; i < commits; i++) {
                    long number = next.incrementAndGet();
                    insert.setObject(1, UUID.randomUUID());
                    insert.setString(2, "reel/R-B" + number % REELS);
                    insert.setLong(3, number);
                    insert.setString(4, "reel");
                    insert.setString(5, "reel.length-fitted");
                    insert.setString(6, "1");
                    insert.setBytes(7, PAYLOAD);
                    insert.setBytes(8, new byte[] {'{', '}'});
                    insert.setString(9, "2026-05-04T08:00:00Z");
                    insert.executeUpdate();
                    connection.commit();
                }
            }
        }
        return commits;
    }

    private long ours(int commits) {
        for (int i = 0; i < commits; i++) {
            long number = next.incrementAndGet();
            work.inOneTransaction(() -> {
                commands.send(new ReelCommand.RecordFact(
                        reel(number),
                        "band B-" + number,
                        Place.crew(WHO),
                        Place.tree(new TreeId("T-" + number % 500)),
                        Length.ofMm(1),
                        new SiteId("S-B"),
                        WHO,
                        Occurred.at(Instant.EPOCH)));
                return number;
            });
        }
        return commits;
    }

    private static long inThreads(int threads, Callable<Long> task) throws Exception {
        try (ExecutorService pool = Executors.newFixedThreadPool(threads)) {
            List<Future<Long>> parts = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                parts.add(pool.submit(task));
            }
            long done = 0;
            for (Future<Long> part : parts) {
                done += part.get();
            }
            return done;
        }
    }
}
