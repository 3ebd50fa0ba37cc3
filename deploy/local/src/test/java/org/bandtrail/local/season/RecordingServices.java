package org.bandtrail.local.season;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One HTTP server that stands in for all services: it accepts what it is sent, keeps it, and answers the least. */
final class RecordingServices implements AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** One request that changes something, in order of arrival. */
    record Sent(String path, String person, JsonNode body) {}

    final List<Sent> sent = new ArrayList<>();
    private final HttpServer server;
    private final Path demoData;
    private @Nullable String refusedPath;
    private long lawDifference;

    RecordingServices(Path demoData) throws IOException {
        this.demoData = demoData;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.start();
    }

    URI uri() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort());
    }

    /** From now on refuses this path. */
    void refuse(String path) {
        refusedPath = path;
    }

    /** From now on the audit's law differs by this much. */
    void breakLawBy(long difference) {
        lawDifference = difference;
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        byte[] content = exchange.getRequestBody().readAllBytes();
        boolean isJson = content.length > 0 && content[0] == '{';
        if (!exchange.getRequestMethod().equals("GET") && isJson) {
            String person = exchange.getRequestHeaders().getFirst("Bandtrail-Person");
            sent.add(new Sent(path, person, JSON.readTree(content)));
        }
        boolean refused = path.equals(refusedPath);
        String answer = refused
                ? "{\"title\":\"Not so.\",\"detail\":\"The reel [R-0001] is somewhere else.\",\"status\":422}"
                : answerTo(exchange.getRequestURI());
        exchange.getResponseHeaders().add("Bandtrail-Feed-Head", "7");
        byte[] bytes = answer.getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(refused ? 422 : 200, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private String answerTo(URI uri) throws IOException {
        return switch (uri.getPath()) {
            case "/feeds" ->
                "{\"rows\":[%s,%s,%s]}".formatted(read("supply-stock"), read("site-installs"), read("inspections"));
            case "/feed" -> "[]";
            case "/audit" ->
                "{\"laws\":[{\"name\":\"length\",\"statement\":\"in = out\",\"left\":1,\"right\":2," + "\"difference\":"
                        + lawDifference + "}],\"findings\":[{}]}";
            case "/tree-imports/preview" -> "{\"importId\":\"I-1\",\"ready\":3,\"problems\":[{\"row\":2}]}";
            case "/bands/check" -> "{\"questions\":[{\"field\":\"girth\"}]}";
            case "/trees" -> uri.getQuery() == null ? "{}" : trees(uri.getQuery());
            default -> "{}";
        };
    }

    private static String read(String service) {
        return "{\"feed\":\"%s\",\"state\":\"reading\",\"position\":7}".formatted(service);
    }

    private String trees(String query) throws IOException {
        String site = query.substring("site=".length(), "site=S-00".length());
        TreeSet<String> rows = new TreeSet<>();
        for (String file : List.of("season/fits.csv", "trees/looked-at.csv")) {
            for (Row row : CsvRows.read(demoData.resolve(file))) {
                if (row.text("siteId").equals(site)) {
                    rows.add("{\"tag\":\"%s\",\"treeId\":\"%s-%s\"}".formatted(row.text("tag"), site, row.text("tag")));
                }
            }
        }
        return "{\"rows\":[" + String.join(",", rows) + "],\"next\":null}";
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
