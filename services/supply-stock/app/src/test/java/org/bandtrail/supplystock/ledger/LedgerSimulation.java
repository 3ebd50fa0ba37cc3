package org.bandtrail.supplystock.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import org.bandtrail.eventstore.StoredEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The law of the ledger over random histories in which everything happens in any order. */
class LedgerSimulation {
    private static LedgerOnPostgres books;

    @BeforeAll
    static void migrate() {
        books = new LedgerOnPostgres("ledger_law");
    }

    @Test
    void value_and_quantity_are_conserved_and_agree_with_plain_sums_of_the_events() {
        SplittableRandom random = new SplittableRandom(20_261_125);
        AtomicLong lines = new AtomicLong();
        AtomicLong late = new AtomicLong();
        for (int run = 0; run < 40; run++) {
            int seed = run;
            List<StoredEvent> events = LedgerHistories.random(seed, 120).events();
            books.rolledBack(() -> {
                books.postInPages(events, random);
                agreesWithPlainSums(seed, PlainBooks.of(events));
                poolsHoldTogether(seed);
                sumsAreThoseOfTheLines(seed);
                lines.addAndGet(books.number("SELECT count(*) FROM ledger_line"));
                late.addAndGet(books.number("SELECT count(*) FROM ledger_line WHERE source = 'not-received:'"));
            });
        }
        assertThat(lines).hasValueGreaterThan(3_000);
        assertThat(late).as("late receipts that named something").hasPositiveValue();
    }

    @Test
    void twice_is_once_and_other_pages_give_the_same_books() {
        SplittableRandom random = new SplittableRandom(20_261_126);
        for (int run = 0; run < 25; run++) {
            List<StoredEvent> events = LedgerHistories.random(9_000 + run, 120).events();
            List<List<String>> seen = new java.util.ArrayList<>();
            for (int turn = 0; turn < 2; turn++) {
                books.rolledBack(() -> {
                    books.postInPages(events, random);
                    List<String> once = books.everything();
                    books.post(events);
                    assertThat(books.everything()).isEqualTo(once);
                    seen.add(once);
                });
            }
            assertThat(seen.get(0)).isNotEmpty();
            assertThat(seen.get(1)).as("history %d", run).containsExactlyElementsOf(seen.get(0));
        }
    }

    private static void agreesWithPlainSums(int seed, PlainBooks plain) {
        assertThat(books.sums("""
            SELECT holding || ' ' || id || ' ' || place, quantity FROM ledger_place
            WHERE holding <> 'pool'\
            """)).as("quantities of history %d", seed).isEqualTo(plain.quantities);
        plain.reelValues.values().removeIf(minor -> minor == 0);
        assertThat(books.sums("""
            SELECT id, sum(value_minor) FROM ledger_place
            WHERE holding = 'reel' AND stock GROUP BY id\
            """))
                .as("value" + " of reels" + " in history" + " %d", seed)
                .isEqualTo(plain.reelValues);
        assertThat(books.sums("""
            SELECT account, sum(minor) FROM ledger_account
            WHERE kind IN ('TAPE', 'MESH') GROUP BY 1\
            """))
                .as("charges" + " of reels" + " in history" + " %d", seed)
                .isEqualTo(plain.reelCharges);
        plain.itemCosts.values().removeIf(minor -> minor == 0);
        assertThat(books.sums("""
            SELECT material, sum(minor) FROM (
                SELECT split_part(id, ' ', 1) AS material, value_minor AS minor FROM ledger_place
                WHERE holding = 'pool' AND stock
                UNION ALL SELECT material, minor FROM ledger_account WHERE kind = 'FASTENER') AS t
            GROUP BY 1\
            """))
                .as("cost of fasteners in history %d: in stock and paid", seed)
                .isEqualTo(plain.itemCosts);
    }

    private static void poolsHoldTogether(int seed) {
        assertThat(books.sums("""
            SELECT id, sum(value_minor) FROM ledger_place
            WHERE holding = 'pool' AND stock GROUP BY id\
            """))
                .as("layers of history %d", seed)
                .isEqualTo(
                        books.sums("SELECT material || ' ' || currency, sum(left_minor) FROM ledger_layer GROUP BY 1"));
        assertThat(books.sums("""
            SELECT id, greatest(sum(quantity), 0) FROM ledger_place
            WHERE holding = 'pool' AND stock GROUP BY id\
            """))
                .as("pieces of history %d", seed)
                .isEqualTo(books.sums(
                        "SELECT material || ' ' || currency, sum(left_quantity) FROM ledger_layer GROUP BY 1"));
        assertThat(books.sums("SELECT account || material, minor FROM ledger_payer"))
                .isEqualTo(books.sums("""
                    SELECT account || material, sum(minor) FROM ledger_account
                    WHERE kind = 'FASTENER' AND account <> 'written-down' GROUP BY 1\
                    """));
        assertThat(books.sums("""
            SELECT place, sum(quantity) FROM ledger_place WHERE holding = 'pool' GROUP BY place\
            """)).isEqualTo(books.sums("""
                SELECT p.place, sum(p.quantity) FROM ledger_place p JOIN ledger_holding h USING (holding, id)
                WHERE p.holding = 'batch' GROUP BY p.place\
                """));
    }

    private static void sumsAreThoseOfTheLines(int seed) {
        String slot = """
            CASE WHEN %1$s ~ '^(tree|bag|disposed|slit):' THEN split_part(%1$s, ':', 1) || ':' ELSE %1$s END\
            """;
        for (String[] column :
                new String[][] {{"quantity", "quantity", "quantity"}, {"minor", "out_minor", "in_minor"}}) {
            var lines = books.sums(
                    """
                    SELECT k, sum(v) FROM (
                        SELECT period || material || %2$s AS k, -%4$s AS v FROM ledger_line WHERE source IS NOT NULL
                        UNION ALL
                        SELECT period || material || %3$s, %5$s FROM ledger_line WHERE target IS NOT NULL) AS t
                    GROUP BY 1\
                    """.formatted("", slot.formatted("source"), slot.formatted("target"), column[1], column[2]));
            assertThat(books.sums("""
                SELECT period || material || place, sum(in_%1$s - out_%1$s + adjusted_%1$s)
                FROM ledger_trial GROUP BY 1\
                """.formatted(column[0])))
                    .as("trial of history %d in %s", seed, column[0])
                    .isEqualTo(lines);
            assertThat(books.number(
                            "SELECT coalesce(sum(%s), 0) FROM ledger_day WHERE side = 'place'".formatted(column[0])))
                    .isEqualTo(
                            column[0].equals("quantity")
                                    ? 0
                                    : -books.number("SELECT coalesce(sum(minor), 0) FROM ledger_account"));
        }
        assertThat(books.sums("SELECT slot || material, sum(minor) FROM ledger_day WHERE side = 'account' GROUP BY 1"))
                .isEqualTo(books.sums("SELECT account || material, sum(minor) FROM ledger_account GROUP BY 1"));
        assertThat(books.number("""
            SELECT count(*) FROM ledger_place p WHERE stock AND quantity = 0 AND value_minor <> 0
                AND EXISTS (SELECT FROM ledger_place o WHERE o.holding = p.holding AND o.id = p.id
                    AND o.stock AND o.quantity <> 0)\
            """)).as("stranded value in history %d", seed).isZero();
    }
}
