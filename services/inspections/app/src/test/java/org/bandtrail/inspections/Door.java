package org.bandtrail.inspections;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Knocks at the service's door like a device: with the key, for person P-07. */
public final class Door {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;

    public Door(int port) {
        this.address = "http://127.0.0.1:" + port;
    }

    /** An answer: status and body. */
    public record Answer(int status, JsonNode body) {}

    public Answer get(String path) {
        return send(path, HttpRequest.newBuilder().GET());
    }

    public Answer post(String path, String body) {
        return send(path, HttpRequest.newBuilder().POST(BodyPublishers.ofString(body)));
    }

    private Answer send(String path, HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(
                    request.uri(URI.create(address + path))
                            .header("Authorization", "Bearer only-for-the-tests")
                            .header("Bandtrail-Person", "P-07")
                            .header("Content-Type", "application/json")
                            .build(),
                    BodyHandlers.ofString());
            return new Answer(response.statusCode(), JSON.readTree(response.body()));
        } catch (java.io.IOException unreachable) {
            throw new AssertionError("The service did not answer " + path, unreachable);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted", interrupted);
        }
    }
}
