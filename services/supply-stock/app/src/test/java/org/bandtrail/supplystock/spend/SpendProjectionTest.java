package org.bandtrail.supplystock.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.spend.Spend.NotReceived;
import org.bandtrail.testing.PostgresForTests;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** From events to the spend, on a real PostgreSQL. */
class SpendProjectionTest {
    private static JdbcClient jdbc;

    @BeforeAll
    static void migrate() {
        var database = PostgresForTests.freshDatabase("spend").dataSource();
        Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/supply-stock")
                .load()
                .migrate();
        jdbc = JdbcClient.create(database);
    }

    @BeforeEach
    void empty() {
        jdbc.sql("TRUNCATE spend, spend_holding").update();
    }

    @Test
    void a_reel_of_three_metres_for_ten_dollars_is_charged_to_the_sites_it_went_to() {
        apply(new SpendHistories()
                .receive("R-1", MaterialKind.TAPE, 3_000, 10_00, "USD")
                .handOut("R-1")
                .fit("R-1", 1_000, "T-1", "S-1")
                .fit("R-1", 1_000, "T-2", "S-2")
                .fit("R-1", 900, "T-3", "S-1"));

        assertThat(books().rows(SpendBy.SITE, "", 10))
                .containsExactly(
                        new SpendRow("S-1 USD", "S-1", null, null, "USD", 6_33, 0, 0, 6_33, 1_900, 0, 0),
                        new SpendRow("S-2 USD", "S-2", null, null, "USD", 3_34, 0, 0, 3_34, 1_000, 0, 0));
        assertThat(books().rows(SpendBy.TREE, "", 10))
                .extracting(SpendRow::treeId, SpendRow::siteId, SpendRow::totalMinor)
                .containsExactly(tuple("T-1", "S-1", 3_33L), tuple("T-3", "S-1", 3_00L), tuple("T-2", "S-2", 3_34L));
        assertThat(books().identities()).containsExactly(SpendIdentity.of("USD", 10_00, 33, 9_67, 0));
    }

    @Test
    void a_batch_counts_pieces_and_a_mesh_that_comes_back_is_paid_back() {
        SpendHistories history = new SpendHistories()
                .receive("R-2", MaterialKind.MESH, 1_000, 5_00, "USD")
                .handOut("R-2")
                .fit("R-2", 600, "T-1", "S-1")
                .fact("R-2", Place.tree(new TreeId("T-1")), Place.crew(SpendHistories.WHO), 200, "S-1");
        history.add(receipt("F-1", 100, 50));
        history.add(fitted("F-1", 10, new Charge("site:S-1", 10, 5)));
        apply(history);

        assertThat(books().rows(SpendBy.SITE, "", 10))
                .containsExactly(new SpendRow("S-1 USD", "S-1", null, null, "USD", 0, 2_00, 5, 2_05, 0, 400, 10));
        assertThat(books().rows(SpendBy.ITEM, "", 10))
                .extracting(SpendRow::materialCode)
                .containsExactly("MESH-1", "PIN");
        assertThat(books().totals())
                .containsExactly(new SpendRow("USD", null, null, null, "USD", 0, 2_00, 5, 2_05, 0, 400, 10));
        assertThat(books().identities()).containsExactly(SpendIdentity.of("USD", 5_50, 3_45, 2_05, 0));
    }

    @Test
    void what_is_used_before_its_receipt_has_no_price_until_the_receipt_comes() {
        SpendHistories history = new SpendHistories().fit("R-3", 500, "T-1", "S-1");
        apply(history);
        assertThat(books().rows(SpendBy.SITE, "", 10)).isEmpty();
        assertThat(books().notReceived()).containsExactly(new NotReceived("reel", "R-3", "S-1", 500));

        int seen = history.events().size();
        history.receive("R-3", MaterialKind.TAPE, 1_000, 7_00, "USD");
        projection().apply(history.events().subList(seen, history.events().size()));
        assertThat(books().notReceived()).isEmpty();
        assertThat(books().rows(SpendBy.SITE, "", 10))
                .extracting(SpendRow::totalMinor, SpendRow::tapeMm)
                .containsExactly(tuple(3_50L, 500L));
        assertThat(books().identities()).containsExactly(SpendIdentity.of("USD", 7_00, 3_50, 3_50, 0));
    }

    @Test
    void a_cent_that_leaks_shows_in_the_difference() {
        apply(new SpendHistories()
                .receive("R-1", MaterialKind.TAPE, 3_000, 10_00, "USD")
                .handOut("R-1")
                .fit("R-1", 1_000, "T-1", "S-1"));
        jdbc.sql("UPDATE spend SET cost_minor = cost_minor + 1").update();
        assertThat(books().identities())
                .extracting(SpendIdentity::differenceMinor)
                .containsExactly(-1L);
    }

    @Test
    void rows_can_be_read_page_by_page() {
        apply(SpendHistories.random(42, 200));
        List<SpendRow> all = books().rows(SpendBy.TREE, "", 1_000);
        List<SpendRow> paged = new ArrayList<>();
        String after = "";
        for (List<SpendRow> page = books().rows(SpendBy.TREE, after, 3);
                !page.isEmpty();
                page = books().rows(SpendBy.TREE, after, 3)) {
            paged.addAll(page);
            after = page.getLast().key();
        }
        assertThat(all).hasSizeGreaterThan(3);
        assertThat(paged).isEqualTo(all);
    }

    private static void apply(SpendHistories history) {
        projection().apply(history.events());
    }

    private static SpendProjection projection() {
        return new SpendProjection(jdbc);
    }

    private static SpendBooks books() {
        return new SpendBooks(jdbc);
    }

    private static BatchEvent receipt(String batch, long pieces, long minor) {
        return new BatchEvent.Received(
                new BatchId(batch),
                new MaterialCode("PIN"),
                MaterialKind.FASTENER,
                Pieces.of(pieces),
                Money.of(minor, "USD"),
                entry(new Move(Place.SUPPLIER, Place.depot(SpendHistories.DEPOT), pieces)));
    }

    private static BatchEvent fitted(String batch, long pieces, Charge charge) {
        Move move = new Move(Place.crew(SpendHistories.WHO), Place.tree(new TreeId("T-1")), pieces);
        return new BatchEvent.PiecesFitted(new BatchId(batch), "fact", entry(move, charge));
    }

    private static Entry entry(Move move, Charge... charges) {
        return new Entry(
                List.of(move),
                List.of(charges),
                SpendHistories.WHO,
                Occurred.at(Instant.parse("2026-05-04T10:00:00Z")));
    }
}
