package org.bandtrail.local.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.SeasonStopped;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The office's script: order, moments, identities, and what is said of a line that cannot be read or is refused. */
class OfficeTest {
    private static final String ORDER = """
            {"at":"2026-03-02T14:00:00Z","by":"P-17","does":"orders tape","post":"/purchases","body":{"purchaseId":"PO-1"}}
            """;
    private static final String NAME = """
            {"at":"2026-03-01T14:00:00Z","by":"P-17","does":"names a supplier","post":"/suppliers","body":{"n":1}}
            """;

    @TempDir
    Path folder;

    private final List<String> sent = new ArrayList<>();
    private final List<String> hosts = new ArrayList<>();
    private HttpServer server;
    private int status = 200;

    @BeforeEach
    void open() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            sent.add(exchange.getRequestURI().getPath() + " " + body);
            hosts.add(String.valueOf(exchange.getRequestHeaders().getFirst("Host")));
            byte[] answer = "{\"detail\":\"Not so.\"}".getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(status, answer.length);
            exchange.getResponseBody().write(answer);
            exchange.close();
        });
        server.start();
    }

    @AfterEach
    void close() {
        server.stop(0);
    }

    private Doors doors() {
        String at = "http://127.0.0.1:" + server.getAddress().getPort();
        URI supply = URI.create(at);
        URI sites = URI.create("http://localhost:" + server.getAddress().getPort());
        return Doors.at(supply, sites, supply, supply, "key");
    }

    private Office office(String... lines) throws IOException {
        Files.writeString(folder.resolve("1-buying.jsonl"), "# what was bought\n" + String.join("", lines));
        return Office.read(folder, doors().supplyStock(), doors().siteInstalls(), () -> {});
    }

    @Test
    void steps_go_out_in_the_order_of_their_moments_and_no_earlier() throws IOException {
        Office office = office(ORDER, NAME);
        List<Instant> moments = new ArrayList<>();

        assertThat(office.doUntil(Instant.parse("2026-03-02T14:00:00Z"), moments::add))
                .isEqualTo(1);
        assertThat(office.doUntil(Instant.MAX, moments::add)).isEqualTo(1);

        assertThat(sent).extracting(each -> each.split(" ")[0]).containsExactly("/suppliers", "/purchases");
        assertThat(moments).isSorted().hasSize(2);
        assertThat(office.stillToDo()).isZero();
    }

    @Test
    void a_line_has_the_same_identity_each_time_whatever_stands_above_it() throws IOException {
        office(ORDER).doUntil(Instant.MAX, unused -> {});
        office(NAME, ORDER).doUntil(Instant.MAX, unused -> {});

        assertThat(sent).hasSize(3);
        assertThat(sent.get(2)).isEqualTo(sent.get(0)).contains("\"commandId\":\"019cae");
    }

    @Test
    void a_refusal_names_the_line_and_what_it_was_about() throws IOException {
        status = 422;
        Office office = office(ORDER);

        assertThatThrownBy(() -> office.doUntil(Instant.MAX, unused -> {}))
                .isInstanceOf(SeasonStopped.class)
                .hasMessageContaining("1-buying.jsonl line 2 (orders tape)")
                .hasMessageContaining("Not so.");
    }

    @Test
    void a_line_that_lacks_something_is_named() {
        assertThatThrownBy(() -> office("{\"at\":\"2026-03-02T14:00:00Z\",\"post\":\"/purchases\",\"body\":{}}\n"))
                .isInstanceOf(SeasonStopped.class)
                .hasMessage("1-buying.jsonl line 2 has no [by].");
    }

    @Test
    void a_step_goes_through_the_door_it_names_and_an_unknown_door_stops_the_season() throws IOException {
        String site = NAME.replace("\"post\"", "\"door\":\"site-installs\",\"post\"");
        office(NAME, site).doUntil(Instant.MAX, moment -> {});

        assertThat(hosts.get(0)).startsWith("127.0.0.1");
        assertThat(hosts.get(1)).startsWith("localhost");
        assertThatThrownBy(() -> office(NAME.replace("\"post\"", "\"door\":\"kitchen\",\"post\"")))
                .hasMessageContaining("kitchen")
                .hasMessageContaining("line 2");
    }
}
