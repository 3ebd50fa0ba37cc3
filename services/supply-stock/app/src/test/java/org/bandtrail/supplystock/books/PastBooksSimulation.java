package org.bandtrail.supplystock.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.bandtrail.supplystock.books.BookLines.Wanted;
import org.bandtrail.supplystock.ledger.LedgerHistories;
import org.bandtrail.supplystock.ledger.LedgerOnPostgres;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Any past moment, in both times, against all lines added up one by one. */
class PastBooksSimulation {
    private static final Wanted ALL = new Wanted("", "", "", "", "", "");
    private static LedgerOnPostgres books;

    @BeforeAll
    static void migrate() {
        books = new LedgerOnPostgres("past_books");
    }

    @Test
    void any_moment_reads_as_its_lines_say_then_and_now() {
        SplittableRandom random = new SplittableRandom(20_261_127);
        for (int run = 0; run < 20; run++) {
            int seed = run;
            books.rolledBack(() -> {
                books.postInPages(LedgerHistories.random(500 + seed, 100).events(), random);
                List<LineRow> lines = new BookLines(books.jdbc).page(ALL, "", 10_000);
                for (int look = 0; look < 12; look++) {
                    Instant at = moment(lines, random, look);
                    Instant knownAt = moment(lines, random, look);
                    check(lines, at, knownAt);
                }
            });
        }
    }

    /** Every third look is exactly at a line's own time, where a boundary would show. */
    private static Instant moment(List<LineRow> lines, SplittableRandom random, int look) {
        LineRow any = lines.get(random.nextInt(lines.size()));
        Instant exact = random.nextBoolean() ? any.happenedAt() : any.recordedAt();
        return look % 3 == 0 ? exact : exact.plus(Duration.ofMinutes(random.nextInt(-3_000, 3_000)));
    }

    private static void check(List<LineRow> lines, Instant at, Instant knownAt) {
        PastBooks past = new PastBooks(books.jdbc);
        Map<String, List<Long>> places = new HashMap<>();
        Map<String, List<Long>> accounts = new HashMap<>();
        for (LineRow line : lines) {
            if (!line.happenedAt().isAfter(at)) {
                boolean then = !line.recordedAt().isAfter(knownAt);
                add(places, slot(line.source()), line, -line.quantity(), -line.outMinor(), then);
                add(places, slot(line.target()), line, line.quantity(), line.inMinor(), then);
                add(accounts, line.account(), line, line.accountQuantity(), line.accountMinor(), then);
            }
        }
        for (Map<String, List<Long>> plain : List.of(places, accounts)) {
            plain.keySet().removeIf(key -> key.startsWith("not-received:"));
            plain.values().removeIf(sums -> sums.stream().allMatch(sum -> sum == 0));
        }
        assertThat(asMap(past.rows(AsOfBy.PLACE, at, knownAt, "", 10_000))).isEqualTo(places);
        assertThat(asMap(past.rows(AsOfBy.ACCOUNT, at, knownAt, "", 10_000))).isEqualTo(accounts);
        long stock = past.rows(AsOfBy.ITEM, at, knownAt, "", 1_000).stream()
                .mapToLong(AsOf.Row::minorThen)
                .sum();
        assertThat(past.totals(AsOfBy.ITEM, at, knownAt).stream()
                        .mapToLong(AsOf.Total::minorThen)
                        .sum())
                .isEqualTo(stock);
        long reels = past.holdings(at, knownAt, "", 1_000).stream()
                .mapToLong(AsOf.Row::quantityNow)
                .sum();
        long items = past.rows(AsOfBy.ITEM, at, knownAt, "", 1_000).stream()
                .mapToLong(AsOf.Row::quantityNow)
                .sum();
        assertThat(reels).as("all reels and batches, and all items").isEqualTo(items);
    }

    private static void add(
            Map<String, List<Long>> sums,
            @org.jspecify.annotations.Nullable String name,
            LineRow line,
            long quantity,
            long minor,
            boolean then) {
        if (name != null) {
            sums.merge(
                    name + "|" + line.materialCode() + "|" + line.currency(),
                    List.of(then ? quantity : 0, then ? minor : 0, quantity, minor),
                    (a, b) -> List.of(
                            a.get(0) + b.get(0), a.get(1) + b.get(1), a.get(2) + b.get(2), a.get(3) + b.get(3)));
        }
    }

    private static @org.jspecify.annotations.Nullable String slot(@org.jspecify.annotations.Nullable String place) {
        return place == null ? null : place.replaceFirst("^(tree|bag|disposed|slit):.*", "$1:");
    }

    private static Map<String, List<Long>> asMap(List<AsOf.Row> rows) {
        Map<String, List<Long>> map = new HashMap<>();
        rows.forEach(row ->
                map.put(row.key(), List.of(row.quantityThen(), row.minorThen(), row.quantityNow(), row.minorNow())));
        return map;
    }

    @Test
    void the_trial_of_every_month_adds_up_and_a_cent_changed_by_hand_shows() {
        SplittableRandom random = new SplittableRandom(20_261_128);
        books.rolledBack(() -> {
            books.postInPages(LedgerHistories.random(77, 250).events(), random);
            Trials trials = new Trials(books.jdbc);
            List<String> months = books.jdbc
                    .sql("SELECT DISTINCT period FROM ledger_trial ORDER BY 1")
                    .query(String.class)
                    .list();
            assertThat(months).hasSizeGreaterThan(3);
            Map<String, Long> before = new HashMap<>();
            for (String month : months) {
                for (TrialRow row : trials.rows(month, "", 10_000)) {
                    assertThat(row.opening())
                            .as("%s in %s", row.key(), month)
                            .isEqualTo(before.getOrDefault(row.key(), 0L));
                    assertThat(row.opening() + row.in() - row.out() + row.adjusted())
                            .isEqualTo(row.closing());
                    assertThat(row.openingMinor() + row.inMinor() - row.outMinor() + row.adjustedMinor())
                            .isEqualTo(row.closingMinor());
                    before.put(row.key(), row.closing());
                }
                assertThat(trials.law(month))
                        .allSatisfy(law -> assertThat(law.differenceMinor()).isZero());
            }
            assertThat(trials.recount()).isEmpty();
            books.jdbc
                    .sql("UPDATE ledger_account SET minor = minor + 1 WHERE minor <> 0")
                    .update();
            assertThat(trials.law(months.getLast()))
                    .anySatisfy(law -> assertThat(law.differenceMinor()).isNegative());
            books.jdbc.sql("""
                UPDATE ledger_place SET quantity = quantity + 1
                WHERE place = 'depot:NORTH' AND holding = 'reel'\
                """).update();
            assertThat(trials.recount()).isNotEmpty();
        });
    }
}
