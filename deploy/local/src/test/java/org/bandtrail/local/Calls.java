package org.bandtrail.local;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.function.BooleanSupplier;

/** Speaks to a running service as another service would: JSON, with the shared key, on behalf of a person. */
public final class Calls {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
    private final URI base;
    private final String serviceKey;

    public Calls(URI base, String serviceKey) {
        this.base = base;
        this.serviceKey = serviceKey;
    }

    /** What a service answered. */
    public record Answer(int status, String body) {

        /** Whether the service did what it was asked. */
        public boolean isDone() {
            return status >= 200 && status < 300;
        }
    }

    public Answer get(String path) {
        return send(request(path).GET());
    }

    Answer getWithoutKey(String path) {
        return send(HttpRequest.newBuilder(base.resolve(path)).timeout(PATIENCE).GET());
    }

    public Answer post(String path, String json) {
        return send(request(path)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(base.resolve(path))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + serviceKey)
                .header("Bandtrail-Person", "P-01");
    }

    /** A service that cannot be reached, or does not answer in time, gives status 0 and the reason as body. */
    private Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Answer(response.statusCode(), response.body());
        } catch (IOException unreachable) {
            return new Answer(0, unreachable.toString());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return new Answer(0, stopped.toString());
        }
    }

    boolean isUp() {
        return get("/actuator/health").status() == 200;
    }

    /** Asks again and again until something is so. */
    static void waitUntil(String what, Duration atMost, BooleanSupplier isSo) {
        long end = System.nanoTime() + atMost.toNanos();
        while (!isSo.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("Still not so after " + atMost + ": " + what);
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("stopped while waiting", stopped);
        }
    }
}
