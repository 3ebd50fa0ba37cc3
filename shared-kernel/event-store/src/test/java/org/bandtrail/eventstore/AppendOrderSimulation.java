package org.bandtrail.eventstore;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** Many writers that dawdle and roll back, one reader that remembers one number: nothing is missed or comes twice. */
class AppendOrderSimulation {
    private static final int WRITERS = 8;
    private static HikariDataSource dataSource;
    private static JdbcClient jdbc;
    private static AppendOrder order;
    private static DiaryWriters diary;

    @BeforeAll
    static void open() {
        TestDatabase database = PostgresForTests.freshDatabase("append_order");
        dataSource = new HikariDataSource();
        dataSource.setJdbcUrl(database.url());
        dataSource.setUsername(database.user());
        dataSource.setPassword(database.password());
        dataSource.setMaximumPoolSize(WRITERS + 4);
        Flyway.configure()
                .dataSource(dataSource)
                .locations("classpath:db/event-store")
                .load()
                .migrate();
        jdbc = JdbcClient.create(dataSource);
        diary = new DiaryWriters(dataSource);
        order = new AppendOrder(jdbc, new JdbcTransactionManager(dataSource), "diary", "position");
    }

    @AfterAll
    static void close() {
        dataSource.close();
    }

    @BeforeEach
    void emptyDiary() {
        jdbc.sql("""
                DROP TABLE IF EXISTS diary;
                CREATE TABLE diary (position bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
                    subject text NOT NULL, step int NOT NULL, UNIQUE (subject, step));
                CREATE TRIGGER append_order BEFORE INSERT ON diary
                    FOR EACH STATEMENT EXECUTE FUNCTION hold_append_order()""").update();
    }

    @Test
    void every_committed_row_is_read_once_and_each_subject_in_the_order_of_its_commits() throws Exception {
        ConcurrentLinkedQueue<String> committed = new ConcurrentLinkedQueue<>();
        List<Future<Integer>> writers = new ArrayList<>();
        List<Row> read = new ArrayList<>();
        try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
            for (int writer = 0; writer < WRITERS; writer++) {
                Random random = new Random(20_260_504L + writer);
                writers.add(threads.submit(diary.writing(random, committed)));
            }
            boolean working = true;
            while (working) {
                working = writers.stream().anyMatch(writer -> !writer.isDone());
                readOn(read, 7);
            }
        }
        int rolledBack = 0;
        for (Future<Integer> writer : writers) {
            rolledBack += writer.get();
        }
        while (readOn(read, 7)) {
            assertThat(read).hasSizeLessThanOrEqualTo(committed.size());
        }

        assertThat(read.stream().map(Row::line)).containsExactlyInAnyOrderElementsOf(committed);
        assertThat(read).isSortedAccordingTo(Comparator.comparingLong(Row::position));
        for (int subject = 0; subject < 3; subject++) {
            String name = "subject-" + subject;
            assertThat(read.stream().filter(row -> row.subject().equals(name)).map(Row::step))
                    .isSorted()
                    .doesNotHaveDuplicates();
        }
        // The run shows something only if there were gaps to be mistaken about.
        assertThat(rolledBack).isPositive();
        assertThat(committed).hasSizeGreaterThan(WRITERS);
    }

    @Test
    void a_row_behind_a_slower_writer_is_held_back_until_that_writer_has_ended() throws SQLException {
        try (Connection slow = diary.begun()) {
            DiaryWriters.insert(slow, "slow", 1);
            jdbc.sql("INSERT INTO diary (subject, step) VALUES ('quick', 1)").update();

            // Reading without regard to the writer at work would remember 2 and never see 1.
            assertThat(positions()).containsExactly(2L);
            assertThat(order.safeEnd(0, 10)).isZero();

            slow.commit();
        }
        assertThat(order.safeEnd(0, 10)).isEqualTo(2);
        assertThat(positions()).containsExactly(1L, 2L);
    }

    @Test
    void what_comes_before_the_slower_writer_is_not_held_back() throws SQLException {
        jdbc.sql("INSERT INTO diary (subject, step) VALUES ('early', 1)").update();
        try (Connection slow = diary.begun()) {
            DiaryWriters.insert(slow, "slow", 1);
            jdbc.sql("INSERT INTO diary (subject, step) VALUES ('quick', 1)").update();

            assertThat(order.safeEnd(0, 10)).isEqualTo(1);
            slow.rollback();
        }
        assertThat(order.safeEnd(1, 10)).isEqualTo(3);
    }

    @Test
    void a_reader_at_a_gap_does_not_hold_up_other_writers_beyond_its_patience() throws Exception {
        try (Connection slow = diary.begun();
                ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
            DiaryWriters.insert(slow, "slow", 1);
            jdbc.sql("INSERT INTO diary (subject, step) VALUES ('quick', 1)").update();
            Future<Long> reader = threads.submit(() -> order.safeEnd(0, 10));
            Thread.sleep(50);
            long began = System.nanoTime();
            jdbc.sql("INSERT INTO diary (subject, step) VALUES ('quick', 2)").update();
            Duration heldUp = Duration.ofNanos(System.nanoTime() - began);

            assertThat(reader.get()).isZero();
            // A writer behind the reader waits for the rest of its patience; the margin is for a busy machine.
            assertThat(heldUp).isLessThan(Duration.ofMillis(AppendOrder.PATIENCE_MILLIS + 1_500L));
            slow.rollback();
        }
    }

    /** Reads one page; false if there was nothing. */
    private static boolean readOn(List<Row> read, int limit) {
        long after = read.isEmpty() ? 0 : read.getLast().position();
        long end = order.safeEnd(after, limit);
        List<Row> page = jdbc.sql("""
                        SELECT position, subject, step FROM diary WHERE position > ? AND position <= ? ORDER BY position
                        """).params(after, end).query(Row.class).list();
        read.addAll(page);
        return !page.isEmpty();
    }

    private static List<Long> positions() {
        return jdbc.sql("SELECT position FROM diary ORDER BY position")
                .query(Long.class)
                .list();
    }

    private record Row(long position, String subject, int step) {
        String line() {
            return subject + "#" + step;
        }
    }
}
