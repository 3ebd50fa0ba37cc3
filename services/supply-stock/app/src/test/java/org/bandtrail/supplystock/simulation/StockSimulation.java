package org.bandtrail.supplystock.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.YearMonth;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.published.ToldDepots;
import org.bandtrail.supplystock.slittings.CostChanges;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class StockSimulation {
    private static final int HISTORIES = 60;
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    CostChanges costs;

    @Autowired
    Projectors projectors;

    @Autowired
    Clock clock;

    private final AtomicInteger histories = new AtomicInteger();

    @Test
    void length_and_money_agree_with_the_auditor_after_any_history_through_every_feature() {
        FrontDoor door = new FrontDoor(port, key, work, costs);
        setUp(door);

        long steps = Histories.check(HISTORIES, 20_261_125, 30, StockStep::any, history -> {
            String prefix = "SIMH%d-".formatted(histories.incrementAndGet());
            StockPlay play = new StockPlay(door, work, commands, prefix);
            history.forEach(play::play);
            assertThat(projectors.caughtUp(PATIENCE))
                    .as("read models caught up")
                    .isTrue();
            agree(prefix);
        });

        assertThat(steps).isGreaterThan(HISTORIES);
        assertThat(door.granted()).as("wishes granted").isGreaterThan(100);
        assertThat(door.countRefused()).as("wishes refused").isGreaterThan(100);
        theBooksAddUp(door);
    }

    private static void setUp(FrontDoor door) {
        for (String width : new String[] {"381", "127"}) {
            door.wish("/items", """
                    {"materialCode":"%s","kind":"TAPE","name":"Tape","width":"%s mm","reelLength":"50 m",
                     "unitCost":{"minor":1800,"currency":"USD"}}""", width.equals("381") ? "SIM-W" : "SIM-N", width);
        }
        door.wish("/suppliers", """
                {"supplierId":"SIM-S","name":"Simulated"}""");
        for (String depot : new String[] {"SIM-D", "SIM-E"}) {
            door.wish("/bins", """
                    {"depotId":"%s","mark":"A"}""", depot);
        }
    }

    /** What is read is what the stored events say, reel by reel. */
    private void agree(String prefix) {
        BookAuditor auditor = BookAuditor.of(jdbc, prefix);
        assertThat(places(prefix)).as("where everything is").isEqualTo(auditor.places);
        assertThat(ToldDepots.told(jdbc, prefix))
                .as("what the others were told of the depots")
                .isEqualTo(ToldDepots.there(jdbc, prefix));
        assertThat(auditor.slittings)
                .as("cost between wide reels and their strips")
                .isEmpty();
        jdbc.sql("SELECT * FROM reel_balance WHERE id LIKE ? || '%'")
                .param(prefix)
                .query(row -> {
                    String reel = "reel " + row.getString("id");
                    assertThat(row.getLong("cost_minor")).as(reel + " cost").isEqualTo(auditor.paid(reel, "cost"));
                    assertThat(row.getLong("charged_minor")).as(reel + " sites").isEqualTo(auditor.paid(reel, "site:"));
                    assertThat(row.getLong("written_off_minor")).as(reel).isEqualTo(auditor.paid(reel, "written-off"));
                    assertThat(row.getLong("written_down_minor"))
                            .as(reel)
                            .isEqualTo(auditor.paid(reel, "written-down"));
                    assertThat(row.getLong("slit_minor")).as(reel + " strips").isEqualTo(auditor.paid(reel, "slit"));
                    long inStock = row.getLong("cost_minor")
                            - row.getLong("charged_minor")
                            - row.getLong("written_off_minor")
                            - row.getLong("written_down_minor")
                            - row.getLong("slit_minor");
                    assertThat(ledgerValue(row.getString("id")))
                            .as(reel + " value in the ledger")
                            .isEqualTo(inStock);
                });
    }

    private Map<String, Map<String, Long>> places(String prefix) {
        Map<String, Map<String, Long>> places = new TreeMap<>();
        jdbc.sql("SELECT id, place_kind || ':' || place_id, quantity FROM reel_place"
                        + " WHERE id LIKE ? || '%' AND quantity <> 0")
                .param(prefix)
                .query(row -> {
                    places.computeIfAbsent("reel " + row.getString(1), unused -> new TreeMap<>())
                            .put(row.getString(2), row.getLong(3));
                });
        return places;
    }

    private long ledgerValue(String reel) {
        return jdbc.sql(
                        "SELECT coalesce(sum(value_minor), 0) FROM ledger_place WHERE holding = 'reel' AND id = ? AND stock")
                .param(reel)
                .query(Long.class)
                .single();
    }

    /** The laws of the whole: audit zero, no cent leaked, every month's closing is what is there. */
    private void theBooksAddUp(FrontDoor door) {
        assertThat(door.get("/audit").path("zero").asBoolean()).as("the audit").isTrue();
        assertThat(door.get("/audit?recount=true").path("zero").asBoolean())
                .as("the audit, recounted")
                .isTrue();
        assertThat(door.get("/spend?by=site")
                        .path("identity")
                        .path("differenceMinor")
                        .asLong())
                .isZero();
        assertThat(door.get("/periods").path("closedThrough").asString(""))
                .as("a month was closed")
                .isNotEmpty();
        JsonNode recount = door.get("/trial/recount");
        assertThat(recount.path("rows"))
                .as("opening + in - out +- adjustments = closing, at every place")
                .isEmpty();
        for (JsonNode law : door.get("/trial?period=" + YearMonth.now(clock)).path("law")) {
            assertThat(law.path("differenceMinor").asLong(1))
                    .as("paid = stock + accounts")
                    .isZero();
        }
    }
}
