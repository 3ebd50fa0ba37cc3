package org.bandtrail.local.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.bandtrail.local.Calls;
import org.bandtrail.local.House;
import org.bandtrail.local.LauncherOptions;
import org.bandtrail.local.Service;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrailSimulation {
    private static final int HISTORIES = 200;
    private static final long SEED = 20_260_601;
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final List<String> REELS = List.of("R0", "R1", "R2", "R3");

    @TempDir
    static Path folder;

    static House house;
    static Calls supplyStock;
    static Calls siteInstalls;
    static Calls inspections;
    private final AtomicInteger attempts = new AtomicInteger();

    @BeforeAll
    static void start() {
        house = House.start(
                LauncherOptions.parse(folder, "--empty", "--ports", "0,0,0,0"),
                text -> System.out.println("house: " + text));
        supplyStock = new Calls(house.at(Service.SUPPLY_STOCK), house.serviceKey());
        siteInstalls = new Calls(house.at(Service.SITE_INSTALLS), house.serviceKey());
        inspections = new Calls(house.at(Service.INSPECTIONS), house.serviceKey());
        item("SIM-TAPE", "\"kind\":\"TAPE\",\"name\":\"Tape\",\"width\":\"127 mm\",\"reelLength\":\"50 m\"");
        item(
                "SIM-MESH",
                "\"kind\":\"MESH\",\"name\":\"Mesh\",\"width\":\"300 mm\",\"opening\":\"12 mm\",\"reelLength\":\"25 m\"");
    }

    private static void item(String code, String fields) {
        Calls.Answer answer = supplyStock.post("/items", """
                {"commandId":"%s","materialCode":"%s","unitCost":{"minor":1800,"currency":"USD"},%s}""".formatted(java.util.UUID.randomUUID(), code, fields));
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
    }

    @AfterAll
    static void stop() {
        house.close();
    }

    @Test
    void the_books_agree_with_an_auditor_after_any_history_through_the_services() {
        long steps = Histories.check(HISTORIES, SEED, 14, Step::any, this::agree);

        assertThat(steps).isGreaterThan(HISTORIES);
        assertThat(supplyStock.get("/audit").body()).contains("\"zero\":true");
    }

    private void agree(List<Step> history) {
        Playing playing =
                new Playing(supplyStock, siteInstalls, inspections, "H%d-".formatted(attempts.incrementAndGet()));
        history.forEach(playing::play);
        Map<String, Map<String, Long>> expected = playing.expected();
        long end = System.nanoTime() + PATIENCE.toNanos();
        Map<String, Map<String, Long>> books = playing.books(REELS);
        while (!books.equals(expected) && System.nanoTime() < end) {
            pause();
            books = playing.books(REELS);
        }
        assertThat(books).isEqualTo(expected);
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("stopped while waiting", stopped);
        }
    }
}
