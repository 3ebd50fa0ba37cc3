package org.bandtrail.supplystock.reorderpoints;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reorderpoints.UseRecords.ItemAtDepot;
import org.bandtrail.testing.PostgresForTests;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** From events to the use of each day, on a real PostgreSQL. Lengths in mm. */
class DailyUseProjectionTest {
    private static final PersonId WHO = UseHistory.WHO;
    private static final Place NORTH = Place.depot(new DepotId("NORTH"));
    private static final Place SOUTH = Place.depot(new DepotId("SOUTH"));
    private static final Place CREW = Place.crew(WHO);
    private static final Place TREE = Place.tree(new TreeId("T-1"));
    private static final Place BAG = Place.bag(new BagId("BAG-1"));
    private static final LocalDate MAY_1 = LocalDate.of(2026, 5, 1);
    private static final LocalDate JULY_31 = LocalDate.of(2026, 7, 31);
    private static JdbcClient jdbc;

    private final UseHistory history = new UseHistory();

    @BeforeAll
    static void migrate() {
        var database = PostgresForTests.freshDatabase("daily_use").dataSource();
        Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/supply-stock")
                .load()
                .migrate();
        jdbc = JdbcClient.create(database);
    }

    @BeforeEach
    void empty() {
        jdbc.sql("TRUNCATE use_holding, use_depot, use_of_day, use_stock").update();
    }

    @Test
    void use_counts_for_the_depot_that_had_handed_the_reel_out() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        moved("R-1", NORTH, CREW, 50_000, "2026-05-04T07:00:00Z");
        moved("R-1", CREW, TREE, 1_200, "2026-05-04T10:00:00Z");
        moved("R-1", CREW, TREE, 800, "2026-05-04T23:59:59Z");
        moved("R-1", CREW, TREE, 900, "2026-05-05T00:00:00Z");
        apply();

        assertThat(use()).containsOnlyKeys("TAPE-1 NORTH");
        assertThat(use().get("TAPE-1 NORTH"))
                .isEqualTo(Map.of(LocalDate.of(2026, 5, 4), 2_000L, LocalDate.of(2026, 5, 5), 900L));
        assertThat(records().lastDayOfUse()).contains(LocalDate.of(2026, 5, 5));
    }

    @Test
    void a_reel_that_changes_depot_counts_for_each_in_its_time() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        moved("R-1", NORTH, CREW, 50_000, "2026-05-04T07:00:00Z");
        moved("R-1", CREW, TREE, 1_000, "2026-05-10T10:00:00Z");
        moved("R-1", CREW, SOUTH, 49_000, "2026-05-11T17:00:00Z");
        moved("R-1", SOUTH, CREW, 49_000, "2026-05-12T07:00:00Z");
        moved("R-1", CREW, TREE, 3_000, "2026-05-12T10:00:00Z");
        apply();

        assertThat(use())
                .isEqualTo(Map.of(
                        "TAPE-1 NORTH", Map.of(LocalDate.of(2026, 5, 10), 1_000L),
                        "TAPE-1 SOUTH", Map.of(LocalDate.of(2026, 5, 12), 3_000L)));
    }

    @Test
    void a_fact_that_comes_before_its_hand_out_and_its_receipt_finds_its_depot_later() {
        moved("R-1", CREW, TREE, 1_000, "2026-05-04T10:00:00Z");
        apply();
        assertThat(use()).isEmpty();

        moved("R-1", SOUTH, CREW, 50_000, "2026-05-06T07:00:00Z");
        received("R-1", SOUTH, 50_000, "2026-05-06T06:00:00Z");
        apply();
        assertThat(use()).isEqualTo(Map.of("TAPE-1 SOUTH", Map.of(LocalDate.of(2026, 5, 4), 1_000L)));
    }

    @Test
    void what_is_spoilt_counts_and_what_is_taken_down_put_back_or_disposed_does_not() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        moved("R-1", NORTH, CREW, 50_000, "2026-05-04T07:00:00Z");
        moved("R-1", CREW, BAG, 300, "2026-05-04T10:00:00Z");
        moved("R-1", Place.missing(WHO), TREE, 200, "2026-05-04T11:00:00Z");
        moved("R-1", TREE, BAG, 5_000, "2026-05-04T12:00:00Z");
        moved("R-1", TREE, CREW, 6_000, "2026-05-04T13:00:00Z");
        moved("R-1", BAG, Place.disposed(new LoadId("LOAD-1")), 5_000, "2026-05-04T14:00:00Z");
        apply();

        assertThat(use()).isEqualTo(Map.of("TAPE-1 NORTH", Map.of(LocalDate.of(2026, 5, 4), 500L)));
    }

    @Test
    void what_is_on_hand_is_what_lies_in_the_depot() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        received("R-2", NORTH, 20_000, "2026-05-01T09:00:00Z");
        received("R-3", SOUTH, 7_000, "2026-05-01T09:00:00Z");
        moved("R-1", NORTH, CREW, 50_000, "2026-05-04T07:00:00Z");
        moved("R-1", CREW, NORTH, 1_500, "2026-05-08T17:00:00Z");
        apply();

        ItemAtDepot north = new ItemAtDepot("TAPE-1", MaterialKind.TAPE, "NORTH", 21_500, LocalDate.of(2026, 5, 4));
        ItemAtDepot south = new ItemAtDepot("TAPE-1", MaterialKind.TAPE, "SOUTH", 7_000, null);
        assertThat(records().page("", 10)).containsExactly(north, south);
        assertThat(records().page(north.key(), 10)).containsExactly(south);
        assertThat(records().page("", 1)).containsExactly(north);
    }

    @Test
    void outside_the_days_asked_for_nothing_is_counted() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        moved("R-1", NORTH, CREW, 50_000, "2026-05-01T10:00:00Z");
        moved("R-1", CREW, TREE, 10, "2026-04-30T10:00:00Z");
        moved("R-1", CREW, TREE, 20, "2026-05-01T11:00:00Z");
        moved("R-1", CREW, TREE, 40, "2026-08-01T00:00:00Z");
        apply();
        assertThat(use()).isEqualTo(Map.of("TAPE-1 NORTH", Map.of(MAY_1, 20L)));
    }

    @Test
    void one_event_at_a_time_gives_the_same_as_one_page() {
        received("R-1", NORTH, 50_000, "2026-05-01T09:00:00Z");
        for (int day = 4; day < 28; day++) {
            moved("R-1", NORTH, CREW, 2_000, "2026-05-%02dT07:00:00Z".formatted(day));
            moved("R-1", CREW, TREE, 100 + day, "2026-05-%02dT09:00:00Z".formatted(day));
            moved("R-1", CREW, TREE, 200, "2026-05-%02dT10:00:00Z".formatted(day));
            moved("R-1", CREW, NORTH, 1_700 - day, "2026-05-%02dT17:00:00Z".formatted(day));
        }
        List<StoredEvent> all = history.takeEvents();
        new DailyUseProjection(jdbc).apply(all);
        var inOnePage = List.of(use(), records().page("", 10));
        empty();
        all.forEach(event -> new DailyUseProjection(jdbc).apply(List.of(event)));
        assertThat(List.of(use(), records().page("", 10))).isEqualTo(inOnePage);
    }

    private static Map<String, Map<LocalDate, Long>> use() {
        return records().useByDay(MAY_1, JULY_31);
    }

    private static UseRecords records() {
        return new UseRecords(jdbc);
    }

    private void apply() {
        new DailyUseProjection(jdbc).apply(history.takeEvents());
    }

    private void received(String reel, Place depot, long mm, String when) {
        history.received(reel, depot, mm, when);
    }

    private void moved(String reel, Place source, Place target, long mm, String when) {
        history.moved(reel, source, target, mm, when);
    }
}
