package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.eventexchange.ReadingSide.await;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bandtrail.eventexchange.FeedTransport.Fault;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What every transport must pass: whatever it does to the events on their way, each committed event has its effect
 * exactly once, the events of a subject in the order of their commits, and one that cannot be handled stops the feed at
 * its place. A transport is tested by a subclass that carries the outbox to the reader and does the faults asked for.
 */
abstract class FeedTransportContract {
    private ExchangeDatabase publisher;
    private ReadingSide readingSide;
    private FeedTransport transport;
    private FeedLoop loop;

    /** Starts the transport under test on the publisher's outbox. */
    abstract FeedTransport start(ExchangeDatabase publisher);

    @BeforeEach
    void open() {
        publisher = new ExchangeDatabase("publishing");
        readingSide = new ReadingSide("reading");
        transport = start(publisher);
        loop = new FeedLoop(readingSide.reader(transport.feed(), "replica-1"));
    }

    @AfterEach
    void close() {
        loop.stop(Duration.ofSeconds(10));
        transport.close();
        readingSide.close();
        publisher.close();
    }

    @Test
    void each_event_arrives_once_and_in_order() {
        publishNotes(3, 25);
        loop.start();

        awaitAll(3, 25);
        assertThat(readingSide.status().repeated()).isZero();
        assertThat(readingSide.status().lag()).isZero();
    }

    @Test
    void an_event_published_while_the_reader_waits_arrives_soon() {
        loop.start();
        await(() -> !readingSide.database.statuses.all().isEmpty());

        publishNotes(1, 1);

        awaitAll(1, 1);
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void whatever_happens_on_the_way_the_effect_is_once_and_in_order(Fault fault) {
        transport.suffer(EnumSet.of(fault));
        publishNotes(3, 25);

        loop.start();

        awaitAll(3, 25);
        assertThat(transport.faultsDone()).as("%s was done", fault).isPositive();
        assertThat(readingSide.status().state()).isEqualTo("reading");
    }

    @Test
    void a_restart_of_publisher_and_reader_in_the_middle_loses_and_repeats_nothing() {
        publishNotes(3, 20);
        loop.start();
        await(() -> readingSide.heard().size() > 5);

        transport.restart();
        publishNotesFrom(3, 21, 40);
        loop.stop(Duration.ofSeconds(10));
        loop = new FeedLoop(readingSide.reader(transport.feed(), "replica-2"));
        loop.start();
        transport.restart();

        awaitAll(3, 40);
    }

    @Test
    void an_event_at_fault_stops_the_feed_at_its_place_until_it_is_mended() {
        publishNotes(1, 12);
        publisher
                .jdbc
                .sql("UPDATE outbox SET data = '{\"odd\":true}' WHERE data ->> 'number' = '8'")
                .update();

        loop.start();

        await(() -> readingSide.state().equals("stopped"));
        assertThat(readingSide.numbersByNote()).isEqualTo(expected(1, 7));
        assertThat(readingSide.status().why()).contains("NoteWritten cannot be read");
        assertThat(readingSide.status().stoppedPosition()).isEqualTo(8);

        publisher.jdbc.sql("""
                UPDATE outbox SET data = (SELECT replace(data::text, '"number":7', '"number":8')::json
                                          FROM outbox WHERE data ->> 'number' = '7')
                WHERE data ->> 'odd' = 'true'""").update();
        assertThat(readingSide.database.statuses.resume(ExchangeDatabase.SOURCE, "P-07"))
                .isTrue();

        awaitAll(1, 12);
    }

    @Test
    void concurrent_writers_are_read_completely_and_in_order() throws Exception {
        transport.suffer(EnumSet.of(Fault.DUPLICATE, Fault.REORDER, Fault.CUT, Fault.DROP));
        loop.start();
        Map<String, Integer> committed = new ConcurrentHashMap<>();
        List<Future<?>> writers = new ArrayList<>();
        try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
            for (int writer = 1; writer <= 6; writer++) {
                String noteId = "N-" + writer;
                Random random = new Random(20_260_504L + writer);
                writers.add(threads.submit(() -> committed.put(noteId, writeAndRollBack(noteId, random))));
            }
        }
        for (Future<?> writer : writers) {
            writer.get();
        }
        int total = committed.values().stream().mapToInt(Integer::intValue).sum();
        await(() -> readingSide.heard().size() >= total);

        Map<String, List<Integer>> numbers = readingSide.numbersByNote();
        assertThat(numbers.keySet()).isEqualTo(committed.keySet());
        committed.forEach((noteId, count) -> assertThat(numbers.get(noteId)).isEqualTo(upTo(count)));
    }

    /** Writes 1, 2, 3 ... of one note, now and then dawdling or rolling back; returns how many were committed. */
    private int writeAndRollBack(String noteId, Random random) {
        int number = 0;
        for (int i = 0; i < 30; i++) {
            NoteWritten note = new NoteWritten(noteId, number + 1, "note", ExchangeDatabase.NOON);
            boolean keep = random.nextInt(4) > 0;
            int dawdleMillis = random.nextInt(10);
            publisher.transactions.executeWithoutResult(status -> {
                publisher.outbox.append(UUID.randomUUID(), note);
                ReadingSide.sleep(dawdleMillis);
                if (!keep) {
                    status.setRollbackOnly();
                }
            });
            number += keep ? 1 : 0;
        }
        return number;
    }

    private void publishNotes(int notes, int numbers) {
        publishNotesFrom(notes, 1, numbers);
    }

    private void publishNotesFrom(int notes, int first, int last) {
        for (int number = first; number <= last; number++) {
            for (int note = 1; note <= notes; note++) {
                publisher.publish("N-" + note, number);
            }
        }
    }

    private void awaitAll(int notes, int numbers) {
        await(() -> readingSide.heard().size() >= notes * numbers
                && readingSide.status().lag() == 0);
        assertThat(readingSide.numbersByNote()).isEqualTo(expected(notes, numbers));
    }

    private static Map<String, List<Integer>> expected(int notes, int numbers) {
        return IntStream.rangeClosed(1, notes)
                .boxed()
                .collect(Collectors.toMap(note -> "N-" + note, note -> upTo(numbers)));
    }

    private static List<Integer> upTo(int count) {
        return IntStream.rangeClosed(1, count).boxed().toList();
    }
}
