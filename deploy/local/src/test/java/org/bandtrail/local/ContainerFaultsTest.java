package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.IntStream;
import org.bandtrail.testing.ContainerEngine;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * PostgreSQL dies or stands still under a running supply-stock. What was confirmed is there afterwards, what was not is
 * sent again with the same command id, and in the end everything has happened exactly once.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init") // set before the first test, or no test runs
class ContainerFaultsTest {

    private static final Duration RECOVERY = Duration.ofSeconds(90);

    private final ContainerEngine.Finding engine = ContainerEngine.look(System.getenv());
    private FaultyPostgres postgres;
    private ConfigurableApplicationContext service;
    private DataFolder folder;
    private Calls calls;

    @BeforeAll
    void start_supply_stock_on_a_postgresql_in_a_container(@TempDir Path temporary) {
        if (!engine.answers()) {
            return;
        }
        postgres = new FaultyPostgres();
        folder = DataFolder.open(temporary);
        Ports ports = Ports.parse("0,0,0,0").claimed();
        service = ServiceContext.start(Service.SUPPLY_STOCK, folder, postgres.database(), ports, ClockWiring.clock());
        calls = new Calls(Service.at(ports.of(Service.SUPPLY_STOCK)), folder.secret("service-key"));
        assertDone(calls.post("/items", """
                {"commandId": "%s", "materialCode": "TAPE", "kind": "TAPE", "name": "Tape 127 mm", "width": "127 mm",
                 "reelLength": "30480 mm", "unitCost": {"minor": 1850, "currency": "USD"}}""".formatted(id(0, 1))));
        assertDone(calls.post("/depots", """
                {"commandId": "%s", "depotId": "D-1", "name": "First yard"}""".formatted(id(0, 2))));
    }

    /** Before each test and not before all: a class that is left out as a whole appears in no report. */
    @BeforeEach
    void skip_loudly_without_an_engine() {
        assumeTrue(engine.answers(), "container faults need a container engine: " + engine.reason());
    }

    @AfterAll
    void stop() {
        if (postgres != null) {
            service.close();
            folder.close();
            postgres.close();
        }
    }

    @Test
    void after_a_killed_server_the_service_comes_back_by_itself_with_everything_it_confirmed() {
        assertDone(receive(1, 1));
        postgres.kill();
        assertThat(receive(1, 2).isDone()).isFalse();
        postgres.startAgain();
        Calls.waitUntil("the reel is received", RECOVERY, () -> receive(1, 2).isDone());
        assertReelsOnce(1, 2);
    }

    @Test
    void commands_in_flight_when_the_server_dies_are_sent_again_and_happen_once() throws Exception {
        int reels = 40;
        try (ExecutorService senders = Executors.newFixedThreadPool(8)) {
            List<CompletableFuture<Calls.Answer>> flying = new ArrayList<>();
            for (int reel = 1; reel <= reels; reel++) {
                int number = reel;
                flying.add(CompletableFuture.supplyAsync(() -> receive(2, number), senders));
            }
            flying.get(10).get(30, TimeUnit.SECONDS);
            postgres.kill();
            CompletableFuture.allOf(flying.toArray(CompletableFuture[]::new)).join();
            assertThat(flying).anyMatch(answer -> !answer.join().isDone());
        }
        postgres.startAgain();
        for (int reel = 1; reel <= reels; reel++) {
            int number = reel;
            Calls.waitUntil("reel " + number, RECOVERY, () -> receive(2, number).isDone());
        }
        assertReelsOnce(2, reels);
    }

    @Test
    void a_server_that_stands_still_delays_a_command_and_does_not_lose_or_double_it() throws Exception {
        postgres.standStill();
        CompletableFuture<Calls.Answer> waiting = CompletableFuture.supplyAsync(() -> receive(3, 1));
        try {
            waiting.get(2, TimeUnit.SECONDS);
            throw new AssertionError("answered although the database stood still: " + waiting.join());
        } catch (TimeoutException asItShould) {
            postgres.goOn();
        }
        Calls.waitUntil("the reel is received", RECOVERY, () -> receive(3, 1).isDone());
        waiting.join();
        assertReelsOnce(3, 1);
    }

    private Calls.Answer receive(int test, int reel) {
        return calls.post("/reels", """
                {"commandId": "%s", "reelId": "%s", "materialCode": "TAPE", "depotId": "D-1", "length": "30480 mm",
                 "cost": {"minor": 1850, "currency": "USD"}, "happenedAt": "2026-04-01T08:00:00Z"}""".formatted(id(test, reel), reelId(test, reel)));
    }

    private void assertReelsOnce(int test, int reels) {
        List<String> ids = IntStream.rangeClosed(1, reels)
                .mapToObj(reel -> "\"" + reelId(test, reel) + "\"")
                .toList();
        Calls.waitUntil("the list shows every reel", RECOVERY, () -> {
            String list = calls.get("/reels?limit=500").body();
            return ids.stream().allMatch(list::contains);
        });
        for (int reel = 1; reel <= reels; reel++) {
            String one = calls.get("/reels/" + reelId(test, reel)).body();
            assertThat(one).containsPattern("\"receivedMm\"\\s*:\\s*30480\\b");
            assertThat(one.split("\"source\"", -1))
                    .as("moves of %s", reelId(test, reel))
                    .hasSize(2);
        }
    }

    private static void assertDone(Calls.Answer answer) {
        assertThat(answer.isDone()).as(answer.toString()).isTrue();
    }

    private static String reelId(int test, int reel) {
        return "R-%d-%04d".formatted(test, reel);
    }

    private static String id(int test, int number) {
        return "01930000-0000-7000-8000-%06d%06d".formatted(test, number);
    }
}
