package org.bandtrail.local.doors;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The HTTP door of one service, for somebody who holds the key; its OpenAPI page says what it answers. */
public final class FrontDoor {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final String service;
    private final URI base;
    private final String key;
    private final HttpClient client;
    private long feedHead;

    public FrontDoor(String service, URI base, String key, HttpClient client) {
        this.service = service;
        this.base = base;
        this.key = key;
        this.client = client;
    }

    /**
     * Posts JSON for a person.
     *
     * @param origin where the content comes from, for messages
     * @throws SeasonStopped if the service refuses or cannot be reached
     */
    public JsonNode post(String path, JsonNode body, String person, String origin) {
        return send(
                request(path, person)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                origin);
    }

    /** As {@link #post}, but answered only when the lists show it too (RFC 7240, section 4.3). */
    public JsonNode postAndSee(String path, JsonNode body, String person, String origin) {
        return send(
                request(path, person)
                        .header("Content-Type", "application/json")
                        .header("Prefer", "wait=30")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                origin);
    }

    /** As {@link #post}, with PUT. */
    public JsonNode put(String path, JsonNode body, String person, String origin) {
        return send(
                request(path, person)
                        .header("Content-Type", "application/json")
                        .PUT(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                origin);
    }

    /** Uploads a file with a JSON part, as a browser's form does (RFC 7578). */
    public JsonNode upload(String path, FormData form, String person, String origin) {
        return send(
                request(path, person)
                        .header("Content-Type", form.contentType())
                        .POST(HttpRequest.BodyPublishers.ofByteArray(form.bytes()))
                        .build(),
                origin);
    }

    /** Reads a page. */
    public JsonNode get(String path, String person, String origin) {
        return send(request(path, person).GET().build(), origin);
    }

    /** Reads a page, or null if there is none (404). */
    @Nullable
    public JsonNode find(String path, String person, String origin) {
        HttpResponse<String> answer = answer(request(path, person).GET().build(), origin);
        return answer.statusCode() == 404 ? null : accepted(answer, path, origin);
    }

    /** The highest position this service has published, from the header of its feed. */
    public long feedHead(String person) {
        String path = "/feed?after=" + feedHead + "&limit=1";
        HttpResponse<String> answer =
                answer(request(path, person).setHeader("Accept", "*/*").GET().build(), path);
        if (answer.statusCode() != 200) {
            throw new SeasonStopped("%s refused %s with %d.".formatted(service, path, answer.statusCode()));
        }
        feedHead = Math.max(
                feedHead,
                answer.headers().firstValueAsLong("Bandtrail-Feed-Head").orElse(0));
        return feedHead;
    }

    /** The service's name, as its feed is called elsewhere. */
    public String service() {
        return service;
    }

    private HttpRequest.Builder request(String path, String person) {
        return HttpRequest.newBuilder(URI.create(base + path))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + key)
                .header("Bandtrail-Person", person)
                .header("Accept", "application/json, application/problem+json");
    }

    private JsonNode send(HttpRequest request, String origin) {
        return accepted(answer(request, origin), request.uri().getPath(), origin);
    }

    private HttpResponse<String> answer(HttpRequest request, String origin) {
        try {
            return client.send(request, BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException unreachable) {
            throw new SeasonStopped(
                    "%s: %s at %s does not answer (%s). Start it and load again; what is loaded stays."
                            .formatted(origin, service, request.uri(), unreachable),
                    unreachable);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new SeasonStopped(origin + ": loading was interrupted; what is loaded stays.", stopped);
        }
    }

    private JsonNode accepted(HttpResponse<String> answer, String path, String origin) {
        if (answer.statusCode() / 100 != 2) {
            throw new SeasonStopped("%s: %s refused %s with %d. %s"
                    .formatted(origin, service, path, answer.statusCode(), problem(answer.body())));
        }
        return answer.body().isBlank() ? JSON.createObjectNode() : JSON.readTree(answer.body());
    }

    /** The title, detail and questions of an RFC 9457 problem, or whatever else came back. */
    private static String problem(String body) {
        if (!body.startsWith("{")) {
            return body;
        }
        JsonNode problem = JSON.readTree(body);
        String questions = problem.has("questions") ? " " + problem.get("questions") : "";
        return problem.path("title").asString("") + " " + problem.path("detail").asString(body) + questions;
    }
}
