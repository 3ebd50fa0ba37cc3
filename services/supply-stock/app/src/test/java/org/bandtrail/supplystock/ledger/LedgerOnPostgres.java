package org.bandtrail.supplystock.ledger;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.testing.PostgresForTests;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A database with the ledger's tables; what is done in it is rolled back after each run. */
public final class LedgerOnPostgres {
    public final JdbcClient jdbc;
    private final TransactionTemplate transactions;

    /** @param name of the database */
    public LedgerOnPostgres(String name) {
        var database = PostgresForTests.freshDatabase(name).dataSource();
        Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/supply-stock")
                .load()
                .migrate();
        jdbc = JdbcClient.create(database);
        transactions = new TransactionTemplate(new DataSourceTransactionManager(database));
    }

    /** Runs and takes it all back. */
    public void rolledBack(Runnable run) {
        transactions.executeWithoutResult(status -> {
            run.run();
            status.setRollbackOnly();
        });
    }

    void post(List<StoredEvent> page) {
        new LedgerProjection(jdbc).apply(page);
    }

    /** Posts in pages of any size. */
    public void postInPages(List<StoredEvent> events, SplittableRandom random) {
        for (int from = 0; from < events.size(); ) {
            int to = Math.min(events.size(), from + random.nextInt(1, 30));
            post(events.subList(from, to));
            from = to;
        }
    }

    /** Two columns as a map, rows of zero left out. */
    public Map<String, Long> sums(String sql) {
        Map<String, Long> sums = new TreeMap<>();
        jdbc.sql(sql).query(row -> {
            if (row.getLong(2) != 0) {
                sums.put(row.getString(1), row.getLong(2));
            }
        });
        return sums;
    }

    long number(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }

    /** All rows of all tables as text, in order: two books are the same if these are. */
    List<String> everything() {
        return List.of(
                        "ledger_line",
                        "ledger_place",
                        "ledger_holding",
                        "ledger_layer",
                        "ledger_payer",
                        "ledger_trial",
                        "ledger_account",
                        "ledger_day",
                        "ledger_state",
                        "ledger_method",
                        "ledger_crew")
                .stream()
                .flatMap(table -> jdbc
                        .sql("SELECT '%1$s ' || t::text FROM %1$s t ORDER BY 1".formatted(table))
                        .query(String.class)
                        .list()
                        .stream())
                .toList();
    }
}
