package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bandtrail.eventexchange.ReadingSide.await;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.bandtrail.eventexchange.FeedReader.Step;
import org.bandtrail.eventexchange.ReadingSide.Heard;
import org.bandtrail.eventexchange.overview.FeedStatus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.CannotAcquireLockException;

/** One reader, step by step, on a feed that does nothing wrong: what is kept, what is undone, and who reads. */
class FeedReaderTest {
    private ExchangeDatabase publisher;
    private ReadingSide readingSide;
    private Feed feed;
    private FeedReader reader;

    @BeforeEach
    void open() {
        publisher = new ExchangeDatabase("publishing");
        readingSide = new ReadingSide("reading");
        feed = publisher.feed();
        reader = readingSide.reader(feed, "replica-1");
    }

    @AfterEach
    void close() {
        readingSide.close();
        publisher.close();
    }

    @Test
    void a_page_is_kept_with_its_position_and_its_inbox_rows() {
        publish("N-1", 1, 2, 3);

        assertThat(reader.step()).isEqualTo(Step.MOVED);
        assertThat(reader.step()).isEqualTo(Step.NOTHING_NEW);

        assertThat(readingSide.heard()).containsExactly(heard(1), heard(2), heard(3));
        assertThat(readingSide.inboxRows()).isEqualTo(3);
        assertThat(readingSide.status())
                .returns(3L, FeedStatus::position)
                .returns(3L, FeedStatus::applied)
                .returns(0L, FeedStatus::lag)
                .returns("reading", FeedStatus::state);
    }

    @Test
    void what_the_handler_did_is_undone_when_it_fails_and_what_came_before_is_kept() {
        publish("N-1", 1, 2, 3);
        readingSide.then = note -> {
            if (note.number() == 2) {
                throw new IllegalStateException("No reel [R-9] is known here.");
            }
        };

        assertThat(reader.step()).isEqualTo(Step.STOPPED);

        assertThat(readingSide.heard()).containsExactly(heard(1));
        assertThat(readingSide.inboxRows()).isEqualTo(1);
        assertThat(readingSide.status())
                .returns("stopped", FeedStatus::state)
                .returns(1L, FeedStatus::position)
                .returns(2L, FeedStatus::stoppedPosition)
                .returns("No reel [R-9] is known here.", FeedStatus::why)
                .returns(2L, FeedStatus::lag);
        assertThat(reader.step()).as("it stays where it is").isEqualTo(Step.STOPPED);
    }

    @Test
    void an_error_of_the_machine_stops_the_feed_too_instead_of_ending_its_thread() {
        publish("N-1", 1);
        readingSide.then = note -> {
            throw new NoClassDefFoundError("org/bandtrail/Gone");
        };

        assertThat(reader.step()).isEqualTo(Step.STOPPED);
        assertThat(readingSide.status().why()).contains("org/bandtrail/Gone");
    }

    @Test
    void a_resumed_feed_tries_the_same_event_again_and_skips_nothing() {
        publish("N-1", 1, 2);
        readingSide.then = note -> {
            throw new IllegalStateException("not yet");
        };
        assertThat(reader.step()).isEqualTo(Step.STOPPED);
        assertThat(readingSide.database.statuses.resume(ExchangeDatabase.SOURCE, "P-07"))
                .isTrue();
        assertThat(reader.step()).as("still at fault").isEqualTo(Step.STOPPED);

        readingSide.then = note -> {};
        assertThat(readingSide.database.statuses.resume(ExchangeDatabase.SOURCE, "P-07"))
                .isTrue();
        assertThat(readingSide.database.statuses.resume(ExchangeDatabase.SOURCE, "P-07"))
                .isFalse();

        assertThat(reader.step()).isEqualTo(Step.MOVED);
        assertThat(readingSide.heard()).containsExactly(heard(1), heard(2));
    }

    @Test
    void a_failure_that_passes_is_tried_again_by_itself_and_shown_meanwhile() {
        publish("N-1", 1);
        AtomicInteger failures = new AtomicInteger(2);
        readingSide.then = note -> {
            if (failures.getAndDecrement() > 0) {
                throw new CannotAcquireLockException("two writers met");
            }
        };

        assertThatThrownBy(reader::step).isInstanceOf(CannotAcquireLockException.class);
        reader.noteRetry(new CannotAcquireLockException("two writers met"), 0);
        assertThat(readingSide.status().state()).isEqualTo("retrying");
        assertThat(readingSide.status().why()).isEqualTo("two writers met");
        FeedLoop loop = new FeedLoop(reader);
        loop.start();
        await(() -> readingSide.heard().size() == 1);
        loop.stop(Duration.ofSeconds(5));

        assertThat(readingSide.status().state()).isEqualTo("reading");
        assertThat(failures).hasNegativeValue();
    }

    @Test
    void a_type_that_nobody_knows_is_skipped_and_counted() {
        publish("N-1", 1);
        publisher.publish(new NoteTorn("N-1", ExchangeDatabase.NOON));
        publisher.publish(new NoteTorn("N-2", ExchangeDatabase.NOON));
        publish("N-1", 2);

        assertThat(reader.step()).isEqualTo(Step.MOVED);

        assertThat(readingSide.heard()).containsExactly(heard(1), heard(2));
        assertThat(readingSide.status().skipped()).isEqualTo(2);
        assertThat(readingSide.status().skippedTypes())
                .containsExactly(new FeedStatus.SkippedType(NoteTorn.TYPE, 2, 2, 3));
    }

    @Test
    void reading_again_from_zero_changes_nothing() {
        publish("N-1", 1, 2, 3);
        reader.step();
        readingSide.database.jdbc.sql("UPDATE feed_position SET position = 0").update();

        assertThat(reader.step()).isEqualTo(Step.MOVED);

        assertThat(readingSide.heard()).hasSize(3);
        assertThat(readingSide.status()).returns(3L, FeedStatus::repeated).returns(3L, FeedStatus::position);
    }

    @Test
    void old_inbox_rows_can_be_deleted_without_anything_being_handled_twice() {
        publish("N-1", 1, 2, 3);
        reader.step();

        assertThat(new Inbox(readingSide.database.jdbc).prune(ExchangeDatabase.SOURCE, 2))
                .isEqualTo(2);
        publish("N-1", 4);
        reader.step();

        assertThat(readingSide.heard()).containsExactly(heard(1), heard(2), heard(3), heard(4));
    }

    @Test
    void an_event_of_another_source_stops_the_feed() {
        publish("N-1", 1);
        Feed mixedUp = (after, limit, wait) -> {
            Envelope envelope = publisher.pages.after(0, 1).getFirst().envelope();
            Envelope foreign = new Envelope(
                    envelope.id(),
                    "/bandtrail/elsewhere",
                    envelope.type(),
                    envelope.subject(),
                    envelope.time(),
                    envelope.data());
            return new Feed.FeedPage(List.of(new Arrival.Readable(1, 0, foreign)), 1);
        };

        assertThat(readingSide.reader(mixedUp, "replica-1").step()).isEqualTo(Step.STOPPED);
        assertThat(readingSide.status().why()).contains("/bandtrail/elsewhere");
    }

    private void publish(String noteId, int... numbers) {
        for (int number : numbers) {
            publisher.publish(noteId, number);
        }
    }

    private static Heard heard(int number) {
        return new Heard("N-1", number);
    }
}
