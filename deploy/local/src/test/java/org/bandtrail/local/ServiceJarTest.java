package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each service is a program of its own: its jar, a PostgreSQL it is given, and nothing else. */
class ServiceJarTest {

    private static final String KEY = "0123456789abcdef0123456789abcdef";

    @TempDir
    Path temporary;

    @ParameterizedTest
    @EnumSource(Service.class)
    void a_service_starts_alone_from_its_jar_on_a_given_postgresql(Service service) throws Exception {
        Path jar = jar(service);
        assumeThat(jar)
                .as("the jar of %s is made in the package phase; deploy/test runs far enough", service.id())
                .exists();
        Ports ports = Ports.parse("0,0,0,0").claimed();
        TestDatabase database = PostgresForTests.freshDatabase(service.database());
        Path log = temporary.resolve("log");
        Process process = started(service, jar, ports, database, log);
        try {
            Calls calls = new Calls(Service.at(ports.of(service)), KEY);
            Calls.waitUntil(
                    service.id() + " answers", Duration.ofSeconds(90), () -> ended(process, log) || calls.isUp());
            assertThat(migrations(database)).isPositive();
            assertThat(guarded(service, calls)).isTrue();
        } finally {
            process.destroy();
            assertThat(process.waitFor(30, TimeUnit.SECONDS))
                    .as("stops when asked")
                    .isTrue();
        }
    }

    private static Path jar(Service service) {
        String module = service == Service.FRONT_DESK ? "front-desk" : service.id() + "/app";
        String artifact = service == Service.FRONT_DESK ? "front-desk" : service.id() + "-app";
        return Path.of("../../services", module, "target", artifact + "-1.0.0-SNAPSHOT-exec.jar");
    }

    private static Process started(Service service, Path jar, Ports ports, TestDatabase database, Path log)
            throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                ProcessHandle.current().info().command().orElseThrow(),
                "-Xmx400m",
                "-Daxoniq.update-checker.disabled=true",
                "-jar",
                jar.toString());
        for (Service other : Service.values()) {
            URI at = Service.at(ports.of(other));
            builder.command().add("--bandtrail.feeds." + other.id() + ".url=" + at);
        }
        builder.environment()
                .putAll(Map.of(
                        "SERVER_PORT", String.valueOf(ports.of(service)),
                        "SPRING_DATASOURCE_URL", database.url(),
                        "SPRING_DATASOURCE_USERNAME", database.user(),
                        "SPRING_DATASOURCE_PASSWORD", database.password(),
                        "BANDTRAIL_SERVICE_KEY", KEY));
        return builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    }

    private static boolean ended(Process process, Path log) {
        if (process.isAlive()) {
            return false;
        }
        try {
            List<String> lines = Files.readAllLines(log);
            String tail = String.join("\n", lines.subList(Math.max(0, lines.size() - 60), lines.size()));
            throw new AssertionError("It ended with code " + process.exitValue() + ":\n" + tail);
        } catch (IOException e) {
            throw new AssertionError("It ended and left no log", e);
        }
    }

    private static int migrations(TestDatabase database) throws SQLException {
        try (Connection connection = database.dataSource().getConnection();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT count(*) FROM flyway_schema_history WHERE success")) {
            rows.next();
            return rows.getInt(1);
        }
    }

    private static boolean guarded(Service service, Calls calls) {
        String path = service == Service.FRONT_DESK ? "/" : "/feed";
        int status = calls.getWithoutKey(path).status();
        return service == Service.FRONT_DESK ? status == 302 || status == 303 : status == 401;
    }
}
