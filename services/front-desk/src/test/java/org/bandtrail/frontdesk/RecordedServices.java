package org.bandtrail.frontdesk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;

/** All three services as one server on loopback that answers what was recorded and keeps what it was asked. */
final class RecordedServices {
    private final HttpServer server;
    private final Map<String, Answer> answers = new ConcurrentHashMap<>();
    private final List<Asked> asked = new CopyOnWriteArrayList<>();

    /** One request as it arrived. */
    record Asked(String method, String path, @Nullable String query, String person, String key, String body) {}

    private record Answer(int status, String body) {}

    RecordedServices() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException cannotListen) {
            throw new UncheckedIOException(cannotListen);
        }
        server.createContext("/", this::answer);
        server.start();
    }

    String url() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** Answers this method and path, such as {@code GET /trail}, with a recorded file. */
    void recorded(String request, String file) {
        answers.put(request, new Answer(200, text(file)));
    }

    /** Answers with a recorded file in which one text stands for another everywhere. */
    void recordedWith(String request, String file, String text, String instead) {
        String recorded = text(file);
        if (!recorded.contains(text)) {
            throw new IllegalArgumentException("Recorded file [" + file + "] does not say [" + text + "].");
        }
        answers.put(request, new Answer(200, recorded.replace(text, instead)));
    }

    /** A recorded file. */
    static String text(String file) {
        try (InputStream in = RecordedServices.class.getResourceAsStream("/recorded/" + file)) {
            if (in == null) {
                throw new IllegalArgumentException("No recorded file [" + file + "].");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Answers this method and path with a status and JSON if the question contains this text. */
    void answersTo(String request, String query, int status, String json) {
        answers.put(request + "?" + query, new Answer(status, json));
    }

    /** Answers this method and path with a status and JSON. */
    void answers(String request, int status, String json) {
        answers.put(request, new Answer(status, json));
    }

    /** Forgets all answers and all requests. */
    void forget() {
        answers.clear();
        asked.clear();
    }

    /** What was asked so far, oldest first. */
    List<Asked> asked() {
        return asked;
    }

    /** The last request of this method. */
    Asked last(String method) {
        return asked.stream()
                .filter(request -> request.method().equals(method))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new AssertionError("No " + method + " was sent; only " + asked));
    }

    private Answer answerTo(String request, String query) {
        return answers.entrySet().stream()
                .filter(each -> each.getKey().startsWith(request + "?"))
                .filter(each -> query.contains(each.getKey().substring(request.length() + 1)))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> answers.getOrDefault(request, new Answer(500, "{}")));
    }

    private void answer(HttpExchange exchange) throws IOException {
        String method = exchange.getRequestMethod();
        String path = exchange.getRequestURI().getPath();
        asked.add(new Asked(
                method,
                path,
                exchange.getRequestURI().getQuery(),
                String.valueOf(exchange.getRequestHeaders().getFirst("Bandtrail-Person")),
                String.valueOf(exchange.getRequestHeaders().getFirst("Authorization")),
                new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8)));
        Answer answer = answerTo(
                method + " " + path, String.valueOf(exchange.getRequestURI().getQuery()));
        byte[] body = answer.body().getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders()
                .set("Content-Type", answer.status() < 400 ? "application/json" : "application/problem+json");
        exchange.sendResponseHeaders(answer.status(), body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }
}
