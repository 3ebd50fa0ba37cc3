package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who comes in at the door of a running service, and what the feed answers them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EntryTest {
    private final RunningNotes notes = new RunningNotes();

    @AfterAll
    void stop() {
        notes.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Bearer ",
                "Bearer wrong",
                "Basic " + NotesService.KEY,
                NotesService.KEY,
                "Bearer " + NotesService.KEY + "0"
            })
    void without_the_key_nobody_comes_in(String authorization) throws Exception {
        HttpResponse<String> answer = notes.get("/feed", authorization);

        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(answer.headers().firstValue("WWW-Authenticate"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("Bearer"));
        assertThat(RunningNotes.JSON.readTree(answer.body()).path("type").stringValue())
                .isEqualTo("/problems/key-needed");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v3/api-docs",
                "/v3/api-docs/x",
                "/v3/api-docs.yaml",
                "/swagger-ui/index.html",
                "/actuator/health"
            })
    void description_and_health_are_open(String path) throws Exception {
        HttpResponse<String> answer = notes.get(path, "");

        // This little service has none of them: what matters is that the key is not asked for.
        assertThat(answer.statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/actuator",
                "/actuator/env",
                "/v3/api-docsx",
                "/swagger-uix",
                "/actuator/health/../env",
                "/v3/api-docs/../../feed",
                "/actuator/health/%2e%2e/%2e%2e/feed",
                "/actuator/health;x=y/../../feed",
                "//feed"
            })
    void nothing_else_is_open(String path) throws Exception {
        HttpResponse<String> answer = notes.get(path, "");

        assertThat(answer.statusCode()).isIn(400, 401);
    }

    @Test
    void the_feed_answers_a_batch_and_says_where_it_ends() throws Exception {
        HttpResponse<String> answer = notes.get("/feed?after=0&limit=10");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("[]");
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/cloudevents-batch+json");
        assertThat(answer.headers().firstValue("Bandtrail-Feed-Next")).contains("0");
        assertThat(answer.headers().firstValue("Bandtrail-Feed-Head")).contains("0");
    }
}
