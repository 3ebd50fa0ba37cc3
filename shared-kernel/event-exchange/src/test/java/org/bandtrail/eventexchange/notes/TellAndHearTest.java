package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.overview.FeedStatus;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.testing.PostgresForTests;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.ParameterizedTypeReference;
import org.springframework.http.HttpHeaders;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.client.RestClient;

/**
 * Two services as they run: other-notes tells, my-notes hears. Shows that private events, outbox, inbox and position
 * commit together or not at all, with real Axon commands in between.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TellAndHearTest {
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private ConfigurableApplicationContext telling;
    private ConfigurableApplicationContext hearing;

    @BeforeAll
    void start() {
        telling = NotesService.start(
                PostgresForTests.freshDatabase("telling"), "other-notes", "bandtrail.read-feeds=false");
        hearing = NotesService.start(
                PostgresForTests.freshDatabase("hearing"),
                "my-notes",
                "bandtrail.feeds.other-notes.url=" + NotesService.address(telling));
    }

    @AfterAll
    void stop() {
        hearing.close();
        telling.close();
    }

    @Test
    void work_that_fails_leaves_neither_event_nor_outbox_row() {
        long before = count(telling, "domain_event_entry") + count(telling, "outbox");

        assertThatThrownBy(() -> telling.getBean(Work.class).inOneTransaction(() -> {
                    write(telling, "N-LOST", "never seen");
                    throw new IllegalStateException("after the command");
                }))
                .hasMessage("after the command");

        assertThat(count(telling, "domain_event_entry") + count(telling, "outbox"))
                .isEqualTo(before);
    }

    @Test
    void what_one_tells_the_other_hears_once_until_an_event_at_fault_stops_the_feed() throws InterruptedException {
        tell("N-1", "first");
        tell("N-1", "second");
        await(() -> count(hearing, "inbox") == 2);
        assertThat(storedCopies()).containsExactly("first", "second");
        assertThat(count(hearing, "outbox")).isEqualTo(2);

        tell("N-2", "poison");
        tell("N-1", "third");
        await(() -> onlyFeed().state().equals("stopped"));

        // The handler had sent its command before it failed: nothing of it may be left.
        assertThat(storedCopies()).containsExactly("first", "second");
        assertThat(count(hearing, "outbox")).isEqualTo(2);
        assertThat(count(hearing, "inbox")).isEqualTo(2);
        assertThat(onlyFeed().why()).isEqualTo("This note [N-2] cannot be copied.");
        assertThat(onlyFeed().stoppedPosition()).isEqualTo(onlyFeed().position() + 1);

        mendPoison();
        assertThat(resume("other-notes")).containsEntry("resumed", true);
        await(() -> count(hearing, "inbox") == 4);
        assertThat(storedCopies()).containsExactly("first", "second", "mended", "third");
        assertThat(onlyFeed().state()).isEqualTo("reading");
        assertThat(onlyFeed().lag()).isZero();
    }

    private void tell(String noteId, String text) {
        telling.getBean(Work.class).inOneTransaction(() -> write(telling, noteId, text));
    }

    private static boolean write(ConfigurableApplicationContext service, String noteId, String text) {
        service.getBean(Commands.class).send(new NoteCommand.Write(noteId, text, NOON));
        return true;
    }

    /** The publisher's mistake is put right where it was made. */
    private void mendPoison() {
        telling.getBean(JdbcClient.class)
                .sql("UPDATE outbox SET data = replace(data::text, 'poison', 'mended')::json")
                .update();
    }

    private List<String> storedCopies() {
        return hearing.getBean(JdbcClient.class).sql("""
                        SELECT convert_from(payload, 'UTF8')::json ->> 'text' FROM domain_event_entry
                        ORDER BY global_index
                        """).query(String.class).list();
    }

    private static long count(ConfigurableApplicationContext service, String table) {
        return service.getBean(JdbcClient.class)
                .sql("SELECT count(*) FROM " + table)
                .query(Long.class)
                .single();
    }

    private FeedStatus onlyFeed() {
        Map<String, List<FeedStatus>> rows =
                client().get().uri("/feeds").retrieve().body(new ParameterizedTypeReference<>() {});
        List<FeedStatus> feeds =
                Objects.requireNonNull(Objects.requireNonNull(rows).get("rows"));
        assertThat(feeds).hasSize(1);
        return feeds.getFirst();
    }

    private Map<String, Object> resume(String feed) {
        Map<String, Object> answer = client().post()
                .uri("/feeds/{feed}/resume", feed)
                .header(ActingPerson.HEADER, "P-07")
                .retrieve()
                .body(new ParameterizedTypeReference<>() {});
        return Objects.requireNonNull(answer);
    }

    private RestClient client() {
        return RestClient.builder()
                .baseUrl(NotesService.address(hearing))
                .defaultHeader(HttpHeaders.AUTHORIZATION, "Bearer " + NotesService.KEY)
                .build();
    }

    private static void await(java.util.function.BooleanSupplier condition) throws InterruptedException {
        long deadline = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        while (!condition.getAsBoolean()) {
            assertThat(System.nanoTime()).as("within 30 s").isLessThan(deadline);
            Thread.sleep(50);
        }
    }
}
