package org.bandtrail.eventexchange;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.overview.FeedStatuses;
import org.bandtrail.eventstore.AppendOrder;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A service's database with the tables of store and exchange, and the parts that work on it, without Spring. */
final class ExchangeDatabase implements AutoCloseable {
    static final String SOURCE = "/bandtrail/test-notes";
    static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    final TestDatabase database;
    final HikariDataSource dataSource;
    final JdbcClient jdbc;
    final JdbcTransactionManager transactionManager;
    final TransactionTemplate transactions;
    final OutboxBell bell = new OutboxBell();
    final Outbox outbox;
    final OutboxPages pages;
    final FeedPositions positions;
    final FeedStatuses statuses;

    ExchangeDatabase(String name) {
        database = PostgresForTests.freshDatabase(name);
        dataSource = new HikariDataSource();
        dataSource.setJdbcUrl(database.url());
        dataSource.setUsername(database.user());
        dataSource.setPassword(database.password());
        dataSource.setMaximumPoolSize(24);
        Flyway.configure()
                .dataSource(dataSource)
                .locations("classpath:db/event-store", "classpath:db/event-exchange")
                .load()
                .migrate();
        jdbc = JdbcClient.create(dataSource);
        transactionManager = new JdbcTransactionManager(dataSource);
        transactions = new TransactionTemplate(transactionManager);
        outbox = new Outbox(jdbc, bell);
        pages = new OutboxPages(jdbc, new AppendOrder(jdbc, transactionManager, "outbox", "position"), bell, SOURCE);
        positions = new FeedPositions(jdbc);
        statuses = new FeedStatuses(jdbc);
    }

    /** Publishes one note in a transaction of its own. */
    void publish(String noteId, int number) {
        publish(new NoteWritten(noteId, number, "note", NOON));
    }

    void publish(Object contractEvent) {
        transactions.executeWithoutResult(status -> outbox.append(UUID.randomUUID(), contractEvent));
    }

    /** The outbox as a feed that does nothing wrong. */
    Feed feed() {
        return (after, limit, wait) -> new Feed.FeedPage(List.copyOf(pages.after(after, limit)), pages.head());
    }

    InOneTransaction inOneTransaction() {
        return work -> transactions.executeWithoutResult(status -> work.run());
    }

    @Override
    public void close() {
        dataSource.close();
    }
}
