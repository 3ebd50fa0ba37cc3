package org.bandtrail.benchmark;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** Reads from a service over HTTP, with the key of the services. */
record Browser(HttpClient http, URI service, String key) {

    Browser(URI service, String key) {
        this(HttpClient.newHttpClient(), service, key);
    }

    /** The body of an answer; anything but 200 ends the measurement. */
    String get(String path) throws Exception {
        HttpResponse<String> answer = http.send(
                HttpRequest.newBuilder(service.resolve(path))
                        .header("Authorization", "Bearer " + key)
                        .header("Bandtrail-Person", "P-BENCH")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " was answered with " + answer.statusCode() + ": " + answer.body());
        }
        return answer.body();
    }
}
