package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PostgresServerTest {

    @TempDir
    Path root;

    private final List<String> said = new ArrayList<>();

    @Test
    void what_was_written_is_still_there_after_a_restart() throws SQLException {
        try (DataFolder folder = DataFolder.open(root)) {
            try (PostgresServer server = PostgresServer.start(folder, said::add);
                    Connection connection = ledger(server, folder).open()) {
                run(connection, "CREATE TABLE reel (mm bigint)");
                run(connection, "INSERT INTO reel VALUES (30480)");
            }
            try (PostgresServer server = PostgresServer.start(folder, said::add);
                    Connection connection = ledger(server, folder).open()) {
                assertThat(ask(connection, "SELECT mm FROM reel")).isEqualTo("30480");
                assertThat(ask(connection, "SELECT current_setting('server_version')"))
                        .startsWith("18");
            }
        }
        assertThat(said).singleElement().asString().startsWith("Making a new database cluster");
    }

    @Test
    void a_database_that_may_lose_confirmed_entries_is_refused_by_name() throws SQLException {
        try (DataFolder folder = DataFolder.open(root);
                PostgresServer server = PostgresServer.start(folder, said::add)) {
            ledger(server, folder);
            try (Connection superuser = server.connect(PostgresServer.SUPERUSER)) {
                run(superuser, "ALTER DATABASE ledger SET synchronous_commit = off");
            }
            assertThatThrownBy(() -> ledger(server, folder))
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("synchronous_commit = off")
                    .hasMessageContaining("ledger");
        }
    }

    @Test
    void an_unsafe_line_in_the_configuration_file_is_overruled() throws SQLException, IOException {
        try (DataFolder folder = DataFolder.open(root)) {
            PostgresServer.start(folder, said::add).close();
            Files.writeString(
                    folder.cluster().resolve("postgresql.auto.conf"), "fsync = off\nfull_page_writes = off\n");
            try (PostgresServer server = PostgresServer.start(folder, said::add);
                    Connection connection = server.connect(PostgresServer.SUPERUSER)) {
                assertThat(ask(connection, "SELECT current_setting('fsync')")).isEqualTo("on");
                assertThat(ask(connection, "SELECT current_setting('full_page_writes')"))
                        .isEqualTo("on");
            }
        }
    }

    @Test
    void a_server_left_behind_by_a_killed_launcher_is_stopped_and_its_data_kept() throws SQLException {
        try (DataFolder folder = DataFolder.open(root)) {
            PostgresServer orphan = PostgresServer.start(folder, said::add);
            try (Connection connection = ledger(orphan, folder).open()) {
                run(connection, "CREATE TABLE reel AS SELECT 7 AS mm");
            }
            long before = postmaster(folder).orElseThrow().pid();

            try (PostgresServer next = PostgresServer.start(folder, said::add);
                    Connection connection = ledger(next, folder).open()) {
                assertThat(ask(connection, "SELECT mm FROM reel")).isEqualTo("7");
                // Where nobody collects it an ended process keeps its number, but it no longer has a command line.
                assertThat(ProcessHandle.of(before)
                                .flatMap(process -> process.info().commandLine()))
                        .isEmpty();
                assertThat(said).last().asString().contains("process " + before);
            }
        }
    }

    @Test
    void a_server_killed_together_with_the_machine_recovers_what_it_confirmed() throws SQLException {
        try (DataFolder folder = DataFolder.open(root)) {
            PostgresServer doomed = PostgresServer.start(folder, said::add);
            try (Connection connection = ledger(doomed, folder).open()) {
                run(connection, "CREATE TABLE reel AS SELECT 7 AS mm");
                ProcessHandle postmaster = postmaster(folder).orElseThrow();
                List<ProcessHandle> all =
                        new ArrayList<>(postmaster.descendants().toList());
                all.add(postmaster);
                all.forEach(ProcessHandle::destroyForcibly);
                all.forEach(process -> process.onExit().join());
            }
            try (PostgresServer next = PostgresServer.start(folder, said::add);
                    Connection connection = ledger(next, folder).open()) {
                assertThat(ask(connection, "SELECT mm FROM reel")).isEqualTo("7");
            }
        }
    }

    @Test
    void a_service_cannot_open_the_database_of_another_one() throws SQLException {
        try (DataFolder folder = DataFolder.open(root);
                PostgresServer server = PostgresServer.start(folder, said::add)) {
            ServiceDatabase ledger = ledger(server, folder);
            ServiceDatabase visits = ServiceDatabase.prepared(server, folder, "visits");
            assertThatThrownBy(() -> DriverManager.getConnection(visits.url(), ledger.user(), ledger.password()))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("permission denied for database");
            assertThatThrownBy(() -> DriverManager.getConnection(ledger.url(), ledger.user(), "guessed"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("password authentication failed");
        }
    }

    @Test
    void data_of_another_major_version_is_refused_and_left_alone() throws IOException {
        try (DataFolder folder = DataFolder.open(root)) {
            Files.createDirectories(folder.cluster());
            Files.writeString(folder.cluster().resolve("PG_VERSION"), "15\n");
            assertThatThrownBy(() -> PostgresServer.start(folder, said::add))
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("PostgreSQL 15");
        }
    }

    @Test
    void one_folder_serves_one_process_and_its_secrets_only_their_owner() throws IOException {
        try (DataFolder folder = DataFolder.open(root)) {
            assertThatThrownBy(() -> DataFolder.open(root))
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("already running on the data folder " + root);
            String key = folder.secret("service-key");
            assertThat(key).matches("[0-9a-f]{64}").isEqualTo(folder.secret("service-key"));
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.secretFile("service-key"))))
                    .isEqualTo("rw-------");
        }
        DataFolder.open(root).close();
    }

    private static ServiceDatabase ledger(PostgresServer server, DataFolder folder) {
        return ServiceDatabase.prepared(server, folder, "ledger");
    }

    private static Optional<ProcessHandle> postmaster(DataFolder folder) {
        try {
            String pid = Files.readAllLines(folder.cluster().resolve("postmaster.pid"))
                    .getFirst();
            return ProcessHandle.of(Long.parseLong(pid.strip()));
        } catch (IOException e) {
            throw new AssertionError("no server is running", e);
        }
    }

    private static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static String ask(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            return rows.getString(1);
        }
    }
}
