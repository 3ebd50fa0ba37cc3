package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.eventstore.Work;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Projections share one look at the news; one that stumbles stands still alone, and loses or doubles nothing. */
class ProjectionsTogetherTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Instant MAY = Instant.parse("2026-05-04T09:00:00Z");
    private static final AtomicBoolean STUMBLES = new AtomicBoolean();

    private final TestDatabase database = PostgresForTests.freshDatabase("together");
    private ConfigurableApplicationContext service = start();

    @BeforeEach
    void stand() {
        STUMBLES.set(false);
    }

    @AfterEach
    void close() {
        service.close();
    }

    @Test
    void every_projection_sees_every_event_once() {
        write("a", "b", "c");
        assertThat(service.getBean(Projectors.class).caughtUp(PATIENCE)).isTrue();
        assertThat(seen("steady")).containsExactly("a", "b", "c");
        assertThat(seen("unsteady")).containsExactly("a", "b", "c");
    }

    @Test
    void one_that_stumbles_stands_alone_and_goes_on_where_it_stood() {
        write("a");
        assertThat(service.getBean(Projectors.class).caughtUp(PATIENCE)).isTrue();
        STUMBLES.set(true);
        write("b");
        until(() -> failure("unsteady") != null);
        write("c");
        until(() -> seen("steady").size() == 3);
        assertThat(failure("unsteady")).contains("stumbled over b");
        assertThat(failure("steady")).isNull();
        assertThat(seen("unsteady")).containsExactly("a");

        STUMBLES.set(false);
        until(() -> seen("unsteady").size() == 3);
        write("d");
        assertThat(service.getBean(Projectors.class).caughtUp(PATIENCE)).isTrue();
        assertThat(seen("unsteady")).containsExactly("a", "b", "c", "d");
        assertThat(seen("steady")).containsExactly("a", "b", "c", "d");
    }

    @Test
    void after_a_restart_each_goes_on_where_it_stood() {
        write("a", "b");
        assertThat(service.getBean(Projectors.class).caughtUp(PATIENCE)).isTrue();
        service.close();
        service = start();
        write("c");
        assertThat(service.getBean(Projectors.class).caughtUp(PATIENCE)).isTrue();
        assertThat(seen("steady")).containsExactly("a", "b", "c");
    }

    private ConfigurableApplicationContext start() {
        return NotesService.start(
                List.of(NotesService.class, TwoReaders.class), database, "my-notes", "bandtrail.read-feeds=false");
    }

    private void write(String... texts) {
        Commands commands = service.getBean(Commands.class);
        for (String text : texts) {
            service.getBean(Work.class).inOneTransaction(() -> {
                commands.send(new NoteCommand.Write("N-1", text, MAY));
                return text;
            });
        }
    }

    private List<String> seen(String reader) {
        return service.getBean(JdbcClient.class)
                .sql("SELECT text FROM seen_note WHERE reader = ? ORDER BY number")
                .param(reader)
                .query(String.class)
                .list();
    }

    private @Nullable String failure(String reader) {
        return service.getBean(Projectors.class).standing().stream()
                .filter(each -> each.name().equals(reader))
                .findFirst()
                .orElseThrow()
                .failure();
    }

    private static void until(BooleanSupplier happened) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!happened.getAsBoolean()) {
            assertThat(System.nanoTime()).as("patience").isLessThan(end);
            LockSupport.parkNanos(5_000_000);
        }
    }

    /** Two readers of the notes; they write down what they see, one row for each time they see it. */
    @SpringBootConfiguration(proxyBeanMethods = false)
    static class TwoReaders {
        @Bean
        Projection steady(JdbcClient jdbc) {
            return new Reader("steady", jdbc);
        }

        @Bean
        Projection unsteady(JdbcClient jdbc) {
            return new Reader("unsteady", jdbc);
        }
    }

    private record Reader(String name, JdbcClient jdbc) implements Projection {
        private Reader {
            jdbc.sql("CREATE TABLE IF NOT EXISTS seen_note (number serial, reader text, text text)")
                    .update();
        }

        @Override
        public List<String> tables() {
            return List.of("seen_note");
        }

        @Override
        public List<Class<?>> listensTo() {
            return List.of(NoteEvent.class);
        }

        @Override
        public void apply(List<StoredEvent> page) {
            for (StoredEvent event : page) {
                String text = ((NoteEvent.Written) event.payload()).text();
                if (name.equals("unsteady") && STUMBLES.get()) {
                    throw new IllegalStateException("stumbled over " + text);
                }
                jdbc.sql("INSERT INTO seen_note (reader, text) VALUES (?, ?)")
                        .params(name, text)
                        .update();
            }
        }
    }
}
