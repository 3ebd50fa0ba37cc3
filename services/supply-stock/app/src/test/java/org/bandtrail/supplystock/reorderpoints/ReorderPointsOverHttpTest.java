package org.bandtrail.supplystock.reorderpoints;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.items.ItemCommand;
import org.bandtrail.supplystock.items.ItemDescription;
import org.bandtrail.supplystock.items.Supply;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;

/** The whole way: commands, stored events, projection, item register, HTTP. Own names, as the database is shared. */
@OnPostgres
class ReorderPointsOverHttpTest {
    private static final PersonId WHO = new PersonId("P-1");
    private static final DepotId DEPOT = new DepotId("D-REORDER");
    private static final MaterialCode TAPE = new MaterialCode("REORDER-TAPE");

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Autowired
    Clock clock;

    @Value("${bandtrail.service-key}")
    String key = "";

    @LocalServerPort
    int port;

    @Test
    void twenty_days_of_use_and_the_supply_figures_give_a_point_that_can_be_followed() {
        Instant start = clock.instant().truncatedTo(ChronoUnit.DAYS).minus(20, ChronoUnit.DAYS);
        ReelId used = new ReelId("R-REORDER-1");
        ReelId full = new ReelId("R-REORDER-2");
        register(start);
        work.inOneTransaction(() -> {
            commands.send(receive(used, start));
            commands.send(receive(full, start));
            commands.send(new ReelCommand.HandOut(used, new KitId("K-1"), DEPOT, WHO, WHO, Occurred.at(start)));
            for (int day = 0; day < 20; day++) {
                commands.send(fit(used, day % 2 == 0 ? 3_000 : 1_000, start.plus(day, ChronoUnit.DAYS)));
            }
            return used;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();

        JsonNode answer = get("/reorder-points?limit=1&after=REORDER-TAP");
        JsonNode row = answer.get("rows").get(0);
        assertThat(row.get("materialCode").asString()).isEqualTo("REORDER-TAPE");
        assertThat(row.get("depotId").asString()).isEqualTo("D-REORDER");
        assertThat(row.get("onHand").asLong()).isEqualTo(60_000);
        assertThat(row.get("unit").asString()).isEqualTo("mm");
        assertThat(row.get("daysObserved").asInt()).isEqualTo(20);
        assertThat(row.get("meanPerDay").asDouble()).isEqualTo(2_000);
        assertThat(row.get("leadTimeDays").asInt()).isEqualTo(10);
        assertThat(row.get("serviceLevelPermille").asInt()).isEqualTo(950);
        // m L = 20,000; sd = sqrt(20 x 1000^2 / 19) = 1,025.98; 1.644854 x sqrt(10) x 1,025.98 = 5,336.56
        assertThat(row.get("safetyStock").asLong()).isEqualTo(5_337);
        assertThat(row.get("reorderPoint").asLong()).isEqualTo(25_337);
        assertThat(row.get("reorderNow").asBoolean()).isFalse();
        assertThat(row.get("formula").asString())
                .startsWith("R = m L + z sqrt(")
                .endsWith("= 25337");
        assertThat(LocalDate.parse(row.get("runsOutOn").asString())).isAfter(LocalDate.now(clock));
        assertThat(row.get("note").isNull()).isTrue();
    }

    private void register(Instant when) {
        work.inOneTransaction(() -> {
            commands.send(new ItemCommand.Register(
                    TAPE,
                    new ItemDescription(
                            MaterialKind.TAPE,
                            "Sticky tape",
                            Length.ofMm(127),
                            null,
                            Length.ofMm(60_000),
                            null,
                            Money.of(18_00, "USD")),
                    WHO,
                    Occurred.at(when)));
            commands.send(new ItemCommand.SetSupply(
                    TAPE, new Supply(10, 0, 950), "the supplier keeps his dates", WHO, Occurred.at(when)));
            return TAPE;
        });
    }

    private static ReelCommand receive(ReelId reel, Instant when) {
        return new ReelCommand.Receive(
                reel,
                TAPE,
                MaterialKind.TAPE,
                Length.ofMm(60_000),
                Money.of(18_00, "USD"),
                Place.depot(DEPOT),
                WHO,
                Occurred.at(when));
    }

    private static ReelCommand fit(ReelId reel, long mm, Instant when) {
        return new ReelCommand.RecordFact(
                reel,
                "fact of " + when,
                Place.crew(WHO),
                Place.tree(new TreeId("T-REORDER")),
                Length.ofMm(mm),
                new SiteId("S-REORDER"),
                WHO,
                Occurred.at(when));
    }

    private JsonNode get(String path) {
        return Objects.requireNonNull(RestClient.create("http://127.0.0.1:" + port)
                .get()
                .uri(path)
                .header("Authorization", "Bearer " + key)
                .retrieve()
                .body(JsonNode.class));
    }
}
