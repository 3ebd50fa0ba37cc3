package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;

class OutboxTest {
    private static final UUID CAUSE = UUID.fromString("0197a2b0-0000-7000-8000-000000000001");
    private static ExchangeDatabase database;

    @BeforeAll
    static void open() {
        database = new ExchangeDatabase("outbox");
    }

    @AfterAll
    static void close() {
        database.close();
    }

    @BeforeEach
    void empty() {
        database.jdbc.sql("TRUNCATE outbox").update();
    }

    @Test
    void what_is_appended_is_read_as_it_was_written() {
        var note = new NoteWritten("N-1", 1, "“grün” \\ 3 m", ExchangeDatabase.NOON);
        database.publish(note);

        Envelope envelope = onlyEvent().envelope();

        assertThat(envelope.dataAs(NoteWritten.class)).isEqualTo(note);
        assertThat(envelope.type()).isEqualTo("test-notes.note-written.v1");
        assertThat(envelope.subject()).isEqualTo("note/N-1");
        assertThat(envelope.source()).isEqualTo("/bandtrail/test-notes");
        assertThat(envelope.time()).isEqualTo(ExchangeDatabase.NOON);
    }

    @Test
    void an_append_that_is_rolled_back_is_never_read() {
        database.transactions.executeWithoutResult(status -> {
            database.outbox.append(CAUSE, new NoteWritten("N-1", 1, "gone", ExchangeDatabase.NOON));
            status.setRollbackOnly();
        });

        assertThat(database.pages.after(0, 10)).isEmpty();
    }

    @Test
    void an_append_outside_a_transaction_is_refused() {
        assertThatThrownBy(
                        () -> database.outbox.append(CAUSE, new NoteWritten("N-1", 1, "loose", ExchangeDatabase.NOON)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(CAUSE.toString());
        assertThat(database.pages.after(0, 10)).isEmpty();
    }

    @Test
    void the_same_cause_is_not_published_twice() {
        var note = new NoteWritten("N-1", 1, "once", ExchangeDatabase.NOON);
        database.transactions.executeWithoutResult(status -> database.outbox.append(CAUSE, note));

        assertThatThrownBy(
                        () -> database.transactions.executeWithoutResult(status -> database.outbox.append(CAUSE, note)))
                .isInstanceOf(DuplicateKeyException.class);
        assertThat(onlyEvent().envelope().id())
                .isEqualTo(Outbox.publishedId(CAUSE, NoteWritten.TYPE, 0).toString());
    }

    @Test
    void a_published_id_is_a_name_based_uuid_that_depends_on_cause_type_and_index() {
        UUID id = Outbox.publishedId(CAUSE, NoteWritten.TYPE, 0);

        // RFC 9562: version 5, variant 2. The value was computed with Python's uuid.uuid5 from the same name.
        assertThat(id.version()).isEqualTo(5);
        assertThat(id.variant()).isEqualTo(2);
        assertThat(id).isEqualTo(UUID.fromString("5bfdc936-7a06-5e80-82e1-4a827daf7c79"));
        assertThat(Outbox.publishedId(CAUSE, NoteWritten.TYPE, 1)).isNotEqualTo(id);
        assertThat(Outbox.publishedId(CAUSE, "test-notes.note-torn.v1", 0)).isNotEqualTo(id);
    }

    @Test
    void several_records_of_one_cause_keep_their_order_and_say_what_they_follow() {
        database.transactions.executeWithoutResult(status -> database.outbox.append(
                CAUSE,
                new NoteWritten("N-1", 1, "a", ExchangeDatabase.NOON),
                new NoteWritten("N-1", 2, "b", ExchangeDatabase.NOON)));

        List<Arrival.Readable> page = database.pages.after(0, 10);

        assertThat(page)
                .extracting(a -> a.envelope().dataAs(NoteWritten.class).number())
                .containsExactly(1, 2);
        assertThat(page.getFirst().follows()).isZero();
        assertThat(page.getLast().follows()).isEqualTo(page.getFirst().position());
    }

    @Test
    void the_table_refuses_a_type_without_a_version_and_a_subject_without_a_kind() {
        assertThatThrownBy(() -> insert("test-notes.note-written", "note/N-1"))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> insert(NoteWritten.TYPE, "N-1")).isInstanceOf(DataIntegrityViolationException.class);
        insert(NoteWritten.TYPE, "note/N-1");
    }

    @Test
    void a_record_that_does_not_follow_the_convention_is_refused_by_name() {
        assertThatThrownBy(() -> PublishedName.of(Nameless.class)).hasMessageContaining("Nameless");
        assertThatThrownBy(() -> PublishedName.of(Misnamed.class)).hasMessageContaining("note written");
        assertThatThrownBy(() -> PublishedName.subjectOf(new Misnamed(ExchangeDatabase.NOON)))
                .hasMessageContaining("N 1");
    }

    @Test
    void a_waiting_reader_is_woken_by_a_commit() throws InterruptedException {
        long began = System.nanoTime();
        Thread writer = Thread.ofVirtual().start(() -> {
            sleep(150);
            database.publish("N-1", 1);
        });

        assertThat(database.pages.after(0, 10, Duration.ofSeconds(20))).hasSize(1);

        writer.join();
        assertThat(Duration.ofNanos(System.nanoTime() - began)).isLessThan(Duration.ofSeconds(10));
    }

    private static void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private static void insert(String type, String subject) {
        database.jdbc.sql("""
                INSERT INTO outbox (event_id, type, subject, happened_at, data) VALUES (?, ?, ?, now(), '{}')
                """).params(UUID.randomUUID(), type, subject).update();
    }

    private static Arrival.Readable onlyEvent() {
        List<Arrival.Readable> page = database.pages.after(0, 10);
        assertThat(page).hasSize(1);
        return page.getFirst();
    }

    /** No TYPE. */
    public record Nameless(Instant happenedAt) {}

    /** A TYPE and a subject with blanks. */
    public record Misnamed(Instant happenedAt) {
        public static final String TYPE = "note written";

        public String subject() {
            return "N 1";
        }
    }
}
