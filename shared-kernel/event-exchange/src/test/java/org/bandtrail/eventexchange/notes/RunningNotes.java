package org.bandtrail.eventexchange.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.bandtrail.testing.PostgresForTests;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A running notes service and a client that speaks to it. */
final class RunningNotes implements AutoCloseable {
    static final JsonMapper JSON = JsonMapper.shared();

    private final HttpClient client = HttpClient.newHttpClient();
    private final ConfigurableApplicationContext service =
            NotesService.start(PostgresForTests.freshDatabase("entry"), "my-notes", "bandtrail.read-feeds=false");

    /** With the key. */
    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return get(path, "Bearer " + NotesService.KEY);
    }

    /** With this Authorization, without any if it is empty. */
    HttpResponse<String> get(String path, String authorization) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(path));
        if (!authorization.isEmpty()) {
            request.header("Authorization", authorization);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** Posts a note with the key, for this person, for nobody if it is empty. */
    HttpResponse<String> post(String body, String person) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri("/notes"))
                .header("Authorization", "Bearer " + NotesService.KEY)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (!person.isEmpty()) {
            request.header("Bandtrail-Person", person);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** The answer as a problem, after checking that it is one. */
    static JsonNode problem(HttpResponse<String> answer, int status) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.path("status").intValue()).isEqualTo(status);
        assertThat(problem.path("title").stringValue()).isNotBlank();
        return problem;
    }

    @Override
    public void close() {
        client.close();
        service.close();
    }

    private URI uri(String path) {
        return URI.create(NotesService.address(service) + path);
    }
}
