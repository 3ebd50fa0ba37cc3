package org.bandtrail.supplystock.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.testing.PostgresForTests;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The law of the spend over random histories, on a real PostgreSQL; each history is rolled back after its check. */
class SpendSimulation {
    private static JdbcClient jdbc;
    private static TransactionTemplate transactions;

    @BeforeAll
    static void migrate() {
        var database = PostgresForTests.freshDatabase("spend_law").dataSource();
        Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/supply-stock")
                .load()
                .migrate();
        jdbc = JdbcClient.create(database);
        transactions = new TransactionTemplate(new DataSourceTransactionManager(database));
    }

    @Test
    void two_hundred_random_histories_add_up_whatever_the_pages() {
        SplittableRandom random = new SplittableRandom(20_260_601);
        AtomicLong charged = new AtomicLong();
        for (int run = 0; run < 200; run++) {
            int seed = 1_000 + run;
            transactions.executeWithoutResult(status -> {
                charged.addAndGet(checkHistory(seed, random));
                status.setRollbackOnly();
            });
        }
        assertThat(charged).as("the histories charge something").hasPositiveValue();
    }

    /** Applies one history in pages of any size, compares, and returns what it charged. */
    private static long checkHistory(int seed, SplittableRandom random) {
        List<StoredEvent> events = SpendHistories.random(seed, 60).events();
        for (int from = 0; from < events.size(); ) {
            int to = Math.min(events.size(), from + random.nextInt(1, 20));
            projection().apply(events.subList(from, to));
            from = to;
        }
        assertThat(books().identities())
                .as("history %d", seed)
                .allSatisfy(identity -> assertThat(identity.differenceMinor()).isZero());
        Map<String, Long> bySite = chargesBySiteAndCurrency(events);
        assertThat(books().rows(SpendBy.SITE, "", 100))
                .as("history %d", seed)
                .allSatisfy(row -> assertThat(row.totalMinor()).isEqualTo(bySite.get(row.key())))
                .hasSameSizeAs(bySite.keySet());
        return bySite.values().stream().mapToLong(Long::longValue).sum();
    }

    /** The same sums by another way: straight from the events, reel by reel. */
    private static Map<String, Long> chargesBySiteAndCurrency(List<StoredEvent> events) {
        Map<String, String> currencies = new TreeMap<>();
        for (StoredEvent stored : events) {
            if (stored.payload() instanceof ReelEvent.Received received) {
                currencies.put(received.reelId().value(), received.cost().currency());
            }
        }
        Map<String, Long> sums = new TreeMap<>();
        for (StoredEvent stored : events) {
            ReelEvent event = (ReelEvent) stored.payload();
            String currency = currencies.get(event.reelId().value());
            for (Charge charge : event.entry().charges()) {
                if (currency != null && charge.account().startsWith("site:")) {
                    sums.merge(charge.account().substring(5) + " " + currency, charge.minor(), Long::sum);
                }
            }
        }
        return sums;
    }

    private static SpendProjection projection() {
        return new SpendProjection(jdbc);
    }

    private static SpendBooks books() {
        return new SpendBooks(jdbc);
    }
}
