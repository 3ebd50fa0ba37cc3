package org.bandtrail.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * One PostgreSQL server for all tests of a JVM, started at the first call and stopped with the JVM: PostgreSQL 15 in a
 * container where a Docker-compatible engine answers, an embedded PostgreSQL 18 otherwise. So both ends of the
 * supported range are used. Says once on standard output which it took and why. {@code -Dbandtrail.postgres=container}
 * or {@code =embedded} leaves no choice.
 *
 * <p>The server writes as carefully as in production ({@code fsync}, {@code synchronous_commit} and
 * {@code full_page_writes} on): a test of two writers says little on a server that never waits for its disk. Every test
 * class takes a database of its own, so nothing has to be cleaned up and classes may run side by side.
 */
public final class PostgresForTests {
    /** System property that forces a kind of server: {@code container} or {@code embedded}. */
    public static final String CHOICE = "bandtrail.postgres";

    private static final String IMAGE = "postgres:15";
    private static final int MAX_CONNECTIONS = 300;
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static @Nullable Server server;

    private PostgresForTests() {}

    /**
     * Creates an empty database.
     *
     * @param name what the database is for, for example {@code reels}; a number is added
     * @throws IllegalStateException if no server can be started or it refuses
     */
    public static TestDatabase freshDatabase(String name) {
        Server running = server();
        String stem = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
        // PostgreSQL cuts names at 63 bytes without an error; cut before the number that makes them unique.
        String unique = "%s_%d".formatted(stem.substring(0, Math.min(50, stem.length())), COUNT.incrementAndGet());
        execute(running.database("postgres"), "CREATE DATABASE \"%s\"".formatted(unique));
        return running.database(unique);
    }

    /** In one sentence, which server the tests use; starts it if need be. */
    public static String whichAndWhy() {
        return server().why();
    }

    private static synchronized Server server() {
        if (server == null) {
            server = start(System.getProperty(CHOICE, "auto"));
            System.out.println("PostgreSQL for tests: " + server.why());
        }
        return server;
    }

    private static Server start(String choice) {
        return switch (choice) {
            case "embedded" -> embedded("because -D%s=embedded says so".formatted(CHOICE));
            case "container" -> container("because -D%s=container says so".formatted(CHOICE));
            case "auto" -> startWhatAnswers();
            default ->
                throw new IllegalArgumentException(
                        "Property %s is [%s]. Use container, embedded or nothing.".formatted(CHOICE, choice));
        };
    }

    private static Server startWhatAnswers() {
        ContainerEngine.Finding finding = ContainerEngine.look(System.getenv());
        if (!finding.answers()) {
            return embedded("because " + finding.reason());
        }
        try {
            return container("because " + finding.reason());
        } catch (RuntimeException failed) {
            return embedded("although %s, because %s did not start: %s".formatted(finding.reason(), IMAGE, failed));
        }
    }

    // Testcontainers stops the container when the JVM ends; closing it earlier would take it from other tests.
    @SuppressWarnings("resource")
    private static Server container(String why) {
        PostgreSQLContainer container = new PostgreSQLContainer(IMAGE);
        container.setCommand("postgres", "-c", "max_connections=" + MAX_CONNECTIONS);
        container.start();
        return new Server(
                container.getHost(),
                container.getMappedPort(PostgreSQLContainer.POSTGRESQL_PORT),
                container.getUsername(),
                container.getPassword(),
                "%s in a container, %s".formatted(IMAGE, why));
    }

    // The library's own shutdown hook stops the server and removes its data.
    @SuppressWarnings("resource")
    private static Server embedded(String why) {
        try {
            EmbeddedPostgres postgres = EmbeddedPostgres.builder()
                    .setServerConfig("max_connections", Integer.toString(MAX_CONNECTIONS))
                    .setServerConfig("fsync", "on")
                    .setServerConfig("synchronous_commit", "on")
                    .setServerConfig("full_page_writes", "on")
                    .start();
            return new Server(
                    "localhost", postgres.getPort(), "postgres", "postgres", "embedded PostgreSQL, %s".formatted(why));
        } catch (IOException failed) {
            throw new UncheckedIOException("Embedded PostgreSQL did not start, used %s.".formatted(why), failed);
        }
    }

    private static void execute(TestDatabase database, String sql) {
        try (Connection connection = database.dataSource().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failed) {
            throw new IllegalStateException("The test server refused [%s].".formatted(sql), failed);
        }
    }

    private record Server(String host, int port, String user, String password, String why) {
        private TestDatabase database(String name) {
            return new TestDatabase(name, "jdbc:postgresql://%s:%d/%s".formatted(host, port, name), user, password);
        }
    }
}
