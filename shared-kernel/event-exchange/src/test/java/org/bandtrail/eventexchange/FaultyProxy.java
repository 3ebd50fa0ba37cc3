package org.bandtrail.eventexchange;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.bandtrail.eventexchange.FeedTransport.Fault;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;

/** Stands between reader and publisher and does to the pages what networks, caches and overloaded servers do. */
final class FaultyProxy implements AutoCloseable {
    private static final Map<String, String> HEADERS =
            Map.of("Content-Type", EnvelopeJson.BATCH, "Bandtrail-Feed-Head", "0");
    private final HttpServer server;
    private final HttpClient client = HttpClient.newHttpClient();
    private final Supplier<String> publisherAddress;
    private final Random random = new Random(20_260_504L);
    private final AtomicLong faultsDone = new AtomicLong();
    private volatile EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    private byte[] earlier = "[]".getBytes(StandardCharsets.UTF_8);

    FaultyProxy(Supplier<String> publisherAddress) throws IOException {
        this.publisherAddress = publisherAddress;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        server.createContext("/", this::pass);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    void suffer(EnumSet<Fault> wanted) {
        faults = wanted;
    }

    long faultsDone() {
        return faultsDone.get();
    }

    @Override
    public void close() {
        server.stop(0);
        client.close();
    }

    private void pass(HttpExchange exchange) throws IOException {
        try (exchange) {
            HttpResponse<byte[]> answer = ask(exchange);
            String head = answer.headers().firstValue(FeedController.HEAD).orElse("0");
            synchronized (this) {
                answerWithFaults(exchange, answer.statusCode(), answer.body(), head);
                earlier = answer.body();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private HttpResponse<byte[]> ask(HttpExchange exchange) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(publisherAddress.get() + exchange.getRequestURI()))
                .header("Authorization", exchange.getRequestHeaders().getFirst("Authorization"))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    private void answerWithFaults(HttpExchange exchange, int status, byte[] body, String head)
            throws IOException, InterruptedException {
        byte[] page = body;
        for (Fault fault : faults) {
            if (random.nextBoolean()) {
                continue;
            }
            faultsDone.incrementAndGet();
            switch (fault) {
                case DROP -> page = changed(page, events -> events.remove(random.nextInt(events.size())));
                case DUPLICATE -> page = changed(page, events -> events.add(events.get(random.nextInt(events.size()))));
                case REORDER -> page = changed(page, events -> Collections.shuffle(events, random));
                case SLOW -> Thread.sleep(200);
                case STALE -> page = earlier;
                case CUT -> {
                    sendHalf(exchange, page, head);
                    return;
                }
                case REFUSE -> {
                    send(exchange, 503, "later".getBytes(StandardCharsets.UTF_8), head);
                    return;
                }
                case GARBAGE -> {
                    send(exchange, 200, "<html>Please sign in</html>".getBytes(StandardCharsets.UTF_8), head);
                    return;
                }
            }
        }
        send(exchange, status, page, head);
    }

    private static byte[] changed(byte[] page, java.util.function.Consumer<List<JsonNode>> change) {
        List<JsonNode> events = new ArrayList<>();
        ContractJson.tree(new String(page, StandardCharsets.UTF_8)).forEach(events::add);
        if (!events.isEmpty()) {
            change.accept(events);
        }
        ArrayNode batch = ContractJson.mapper().createArrayNode();
        events.forEach(batch::add);
        return batch.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void send(HttpExchange exchange, int status, byte[] body, String head) throws IOException {
        headers(exchange, head);
        exchange.sendResponseHeaders(status, body.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(body);
        }
    }

    /** Promises the whole page and closes the connection after half of it. */
    private static void sendHalf(HttpExchange exchange, byte[] body, String head) throws IOException {
        headers(exchange, head);
        exchange.sendResponseHeaders(200, body.length);
        exchange.getResponseBody().write(body, 0, body.length / 2);
        exchange.getResponseBody().flush();
    }

    private static void headers(HttpExchange exchange, String head) {
        HEADERS.forEach((name, value) -> exchange.getResponseHeaders().set(name, value));
        exchange.getResponseHeaders().set(FeedController.HEAD, head);
    }
}
