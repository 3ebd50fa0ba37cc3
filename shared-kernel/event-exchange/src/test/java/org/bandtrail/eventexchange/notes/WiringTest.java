package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A service that is told too little does not start, and says what is missing. */
class WiringTest {
    private static TestDatabase database;

    @BeforeAll
    static void create() {
        database = PostgresForTests.freshDatabase("wiring");
    }

    @Test
    void a_handler_whose_service_has_no_address_keeps_the_service_from_starting() {
        assertThatThrownBy(() -> NotesService.start(database, "my-notes"))
                .rootCause()
                .hasMessage("bandtrail.feeds.other-notes.url must be set, because events of /bandtrail/other-notes are"
                        + " handled here.");
    }

    @Test
    void a_key_that_could_be_guessed_keeps_the_service_from_starting() {
        assertThatThrownBy(() -> NotesService.start(
                        database, "my-notes", "bandtrail.read-feeds=false", "bandtrail.service-key=short"))
                .rootCause()
                .hasMessage("bandtrail.service-key must be set, with at least 16 characters.");
    }

    @Test
    void the_migrations_of_store_and_exchange_are_applied_at_the_start() {
        try (var service = NotesService.start(database, "my-notes", "bandtrail.read-feeds=false")) {
            assertThat(service.getBean(JdbcClient.class)
                            .sql("SELECT version FROM flyway_schema_history WHERE success ORDER BY installed_rank")
                            .query(String.class)
                            .list())
                    .contains("001", "005");
        }
    }
}
