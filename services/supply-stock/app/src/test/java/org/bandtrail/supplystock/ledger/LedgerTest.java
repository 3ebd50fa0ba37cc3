package org.bandtrail.supplystock.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.ledger.LedgerHistories.ANNA;
import static org.bandtrail.supplystock.ledger.LedgerHistories.DEPOT;
import static org.bandtrail.supplystock.ledger.LedgerHistories.KEEPER;

import java.time.Duration;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the ledger says about small histories, worked out by hand. */
class LedgerTest {
    private static final ReelId REEL = new ReelId("R-1");
    private static final SiteId SITE = new SiteId("S-1");
    private static LedgerOnPostgres books;

    @BeforeAll
    static void migrate() {
        books = new LedgerOnPostgres("ledger");
    }

    @Test
    void a_reel_carries_its_value_to_the_crew_and_the_site_pays_what_goes_on_a_tree() {
        LedgerHistories history = new LedgerHistories();
        receive(history, 3_000, 10_00);
        history.decide(REEL, new ReelCommand.HandOut(REEL, new KitId("K-1"), DEPOT, ANNA, KEEPER, history.when()));
        fit(history, 1_000);
        books.rolledBack(() -> {
            books.post(history.events());
            assertThat(books.sums("SELECT place, value_minor FROM ledger_place WHERE stock"))
                    .containsOnly(java.util.Map.entry("crew:P-07", 6_67L));
            assertThat(books.sums("SELECT account || ' ' || tree_id || ' ' || person_id, minor FROM ledger_account"))
                    .containsOnly(java.util.Map.entry("site:S-1 T-1 P-07", 3_33L));
            assertThat(books.sums("SELECT period || place, in_minor FROM ledger_trial WHERE in_minor > 0"))
                    .containsEntry("2026-01depot:NORTH", 10_00L)
                    .containsEntry("2026-01crew:P-07", 10_00L);
        });
    }

    @Test
    void what_was_used_before_its_receipt_is_named_and_paid_for_by_it_with_its_tree() {
        LedgerHistories history = new LedgerHistories();
        fit(history, 1_000);
        receive(history, 4_000, 8_00);
        books.rolledBack(() -> {
            books.post(history.events());
            assertThat(books.sums("SELECT material || ' ' || tree_id, minor FROM ledger_account"))
                    .containsOnly(java.util.Map.entry("TAPE-1 T-1", 2_00L));
            assertThat(books.sums("SELECT material || tree_id, quantity FROM ledger_account"))
                    .containsOnly(java.util.Map.entry("TAPE-1T-1", 1_000L));
            assertThat(books.sums("SELECT place, value_minor FROM ledger_place WHERE stock"))
                    .as("the crew owes a metre, the depot has four")
                    .containsOnly(java.util.Map.entry("crew:P-07", -2_00L), java.util.Map.entry("depot:NORTH", 8_00L));
        });
    }

    @Test
    void a_late_fact_posts_to_the_first_open_month_and_keeps_its_own_time() {
        LedgerHistories history = new LedgerHistories();
        receive(history, 3_000, 10_00);
        history.close("2026-01").close("2026-02").later(Duration.ofDays(70), Duration.ofDays(60));
        fit(history, 500);
        history.reopen("2026-02", "2026-01");
        fit(history, 500);
        history.reopen("2026-01", null);
        fit(history, 500);
        books.rolledBack(() -> {
            books.post(history.events());
            assertThat(books.sums("""
                SELECT period || ' ' || happened_at::date, quantity FROM ledger_line
                WHERE target = 'tree:T-1'\
                """))
                    .containsOnlyKeys("2026-03 2026-01-15", "2026-02 2026-01-15", "2026-01 2026-01-15");
        });
    }

    @Test
    void a_changed_cost_goes_to_who_used_it_and_to_what_is_left() {
        LedgerHistories history = new LedgerHistories();
        receive(history, 4_000, 8_00);
        fit(history, 1_000);
        Money more = Money.of(2_00, "USD");
        history.decide(REEL, new ReelCommand.ChangeCost(REEL, CostChange.FREIGHT, more, "I-7", KEEPER, history.when()));
        books.rolledBack(() -> {
            books.post(history.events());
            assertThat(books.sums("SELECT what, sum(minor) FROM ledger_account GROUP BY 1"))
                    .containsOnly(java.util.Map.entry("fitted", 2_00L), java.util.Map.entry("freight", 50L));
            assertThat(books.number("SELECT sum(value_minor) FROM ledger_place WHERE stock"))
                    .isEqualTo(7_50);
            assertThat(books.number("SELECT sum(value_minor) FROM ledger_place WHERE place = 'supplier:'"))
                    .isEqualTo(-10_00);
        });
    }

    @Test
    void fasteners_are_charged_from_their_pool_as_the_policy_of_the_year_says() {
        for (CostMethod method : CostMethod.values()) {
            LedgerHistories history = new LedgerHistories().policy(2026, method);
            pins(history, "F-1", 100, 1_00);
            pins(history, "F-2", 100, 3_00);
            BatchId second = new BatchId("F-2");
            history.decide(
                    second,
                    new BatchCommand.RecordFact(
                            second,
                            "fact",
                            Place.crew(ANNA),
                            Place.tree(new TreeId("T-1")),
                            Pieces.of(50),
                            SITE,
                            ANNA,
                            history.when()));
            books.rolledBack(() -> {
                books.post(history.events());
                assertThat(books.number("SELECT minor FROM ledger_account"))
                        .as("50 pins of the second batch, %s", method.word())
                        .isEqualTo(method == CostMethod.OLDEST_FIRST ? 50 : 1_00);
            });
        }
    }

    private static void receive(LedgerHistories history, long mm, long minor) {
        history.decide(
                REEL,
                new ReelCommand.Receive(
                        REEL,
                        new MaterialCode("TAPE-1"),
                        MaterialKind.TAPE,
                        Length.ofMm(mm),
                        Money.of(minor, "USD"),
                        Place.depot(DEPOT),
                        KEEPER,
                        history.when()));
    }

    private static void fit(LedgerHistories history, long mm) {
        Place tree = Place.tree(new TreeId("T-1"));
        history.decide(
                REEL,
                new ReelCommand.RecordFact(
                        REEL, "fact", Place.crew(ANNA), tree, Length.ofMm(mm), SITE, ANNA, history.when()));
    }

    private static void pins(LedgerHistories history, String batch, long pieces, long minor) {
        BatchId id = new BatchId(batch);
        history.decide(
                id,
                new BatchCommand.Receive(
                        id,
                        new MaterialCode("PIN"),
                        MaterialKind.FASTENER,
                        Pieces.of(pieces),
                        Money.of(minor, "USD"),
                        Place.depot(DEPOT),
                        KEEPER,
                        history.when()));
    }
}
