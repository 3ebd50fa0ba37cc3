package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.bandtrail.eventexchange.overview.FeedStatus;

/**
 * A service that hears: its handler writes each note into a table that would show every repeat, since nothing in it is
 * unique, and in which order they were handled.
 */
final class ReadingSide implements AutoCloseable {
    static final FeedPace QUICK = new FeedPace(
            10, Duration.ofSeconds(1), Duration.ofSeconds(5), Duration.ofMillis(10), Duration.ofMillis(100));

    final ExchangeDatabase database;
    /** Called with each note after it was written and before the transaction ends. */
    volatile Consumer<NoteWritten> then = note -> {};

    ReadingSide(String name) {
        database = new ExchangeDatabase(name);
        database.jdbc.sql("""
                CREATE TABLE heard (handled bigint GENERATED ALWAYS AS IDENTITY, note_id text, number int)""").update();
    }

    FeedReader reader(Feed feed, String replica) {
        return reader(feed, replica, QUICK);
    }

    FeedReader reader(Feed feed, String replica, FeedPace pace) {
        return new FeedReader(
                ExchangeDatabase.SOURCE,
                feed,
                List.of(new Handler()),
                database.positions,
                new Inbox(database.jdbc),
                database.inOneTransaction(),
                replica,
                pace);
    }

    /** What was handled, in the order of handling. */
    List<Heard> heard() {
        return database.jdbc
                .sql("SELECT note_id, number FROM heard ORDER BY handled")
                .query(Heard.class)
                .list();
    }

    /** The numbers handled of each note, in the order of handling. */
    Map<String, List<Integer>> numbersByNote() {
        return heard().stream()
                .collect(Collectors.groupingBy(Heard::noteId, Collectors.mapping(Heard::number, Collectors.toList())));
    }

    long inboxRows() {
        return database.jdbc.sql("SELECT count(*) FROM inbox").query(Long.class).single();
    }

    /** reading, retrying or stopped; empty before the reader's first step. */
    String state() {
        return database.statuses.all().stream()
                .map(FeedStatus::state)
                .findFirst()
                .orElse("");
    }

    FeedStatus status() {
        List<FeedStatus> all = database.statuses.all();
        assertThat(all).hasSize(1);
        return all.getFirst();
    }

    static void await(BooleanSupplier condition) {
        long deadline = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (!condition.getAsBoolean()) {
            assertThat(System.nanoTime()).as("within 60 s").isLessThan(deadline);
            sleep(20);
        }
    }

    static void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    @Override
    public void close() {
        database.close();
    }

    record Heard(String noteId, int number) {}

    private final class Handler implements ReceivedHandler {
        @Override
        public String source() {
            return ExchangeDatabase.SOURCE;
        }

        @Override
        public boolean handles(String type) {
            return type.equals(NoteWritten.TYPE);
        }

        @Override
        public void handle(Envelope envelope) {
            NoteWritten note = envelope.dataAs(NoteWritten.class);
            database.jdbc
                    .sql("INSERT INTO heard (note_id, number) VALUES (?, ?)")
                    .params(note.noteId(), note.number())
                    .update();
            then.accept(note);
        }
    }
}
