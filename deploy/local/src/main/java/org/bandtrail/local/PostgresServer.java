package org.bandtrail.local;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A PostgreSQL 18 server of our own on the loopback address, with its cluster in the data folder. What it has
 * confirmed is on the disk: fsync, synchronous_commit and full_page_writes are on, and {@link DurableSettings} asks
 * the server itself.
 */
public final class PostgresServer implements AutoCloseable {

    static final String SUPERUSER = "postgres";
    private static final String SUPERUSER_SECRET = "database-postgres";
    private static final String MAJOR = "18";

    private final DataFolder folder;
    private final PostgresPrograms programs;
    private final int port;

    private PostgresServer(DataFolder folder, PostgresPrograms programs, int port) {
        this.folder = folder;
        this.programs = programs;
        this.port = port;
    }

    /**
     * Starts the server on a free port, after making the cluster if there is none and stopping a server that an
     * earlier run left behind.
     *
     * @param folder the data folder, open
     * @param say where to tell a person about what takes time or is out of the ordinary
     * @return the running server
     * @throws CannotStart if it cannot be started or does not keep what it confirms
     */
    public static PostgresServer start(DataFolder folder, Consumer<String> say) {
        PostgresPrograms programs = PostgresPrograms.unpacked(folder);
        if (!Files.exists(folder.cluster().resolve("PG_VERSION"))) {
            say.accept("Making a new database cluster in " + folder.cluster());
            makeCluster(folder, programs);
        }
        refuseOtherVersion(folder.cluster());
        stopOrphan(folder.cluster(), programs, say);
        PostgresServer server = new PostgresServer(folder, programs, freePort());
        server.run();
        try (Connection connection = server.connect(SUPERUSER)) {
            DurableSettings.require(connection);
        } catch (SQLException | RuntimeException unusable) {
            server.close();
            throw unusable instanceof CannotStart known
                    ? known
                    : new CannotStart("PostgreSQL started but cannot be used: " + unusable.getMessage(), unusable);
        }
        return server;
    }

    private static void makeCluster(DataFolder folder, PostgresPrograms programs) {
        folder.secret(SUPERUSER_SECRET);
        // The built-in locale sorts and folds letters the same way on every system, now and after an upgrade.
        programs.run(
                "initdb",
                "--pgdata=" + folder.cluster(),
                "--username=" + SUPERUSER,
                "--pwfile=" + folder.secretFile(SUPERUSER_SECRET),
                "--auth=scram-sha-256",
                "--encoding=UTF8",
                "--locale=C",
                "--locale-provider=builtin",
                "--builtin-locale=C.UTF-8");
    }

    private static void refuseOtherVersion(Path cluster) {
        String found = firstLine(cluster.resolve("PG_VERSION")).orElse("nothing");
        if (!MAJOR.equals(found)) {
            throw new CannotStart("The data in " + cluster + " was written by PostgreSQL " + found
                    + ", this Bandtrail brings " + MAJOR + ". Keep the folder and choose another one with --data,"
                    + " then carry the data over with pg_dump.");
        }
    }

    private static void stopOrphan(Path cluster, PostgresPrograms programs, Consumer<String> say) {
        Optional<ProcessHandle> orphan = firstLine(cluster.resolve("postmaster.pid"))
                .map(Long::valueOf)
                .flatMap(ProcessHandle::of)
                .filter(process -> serves(process, cluster));
        if (orphan.isPresent()) {
            // We hold the folder's lock, so whoever started this server is gone.
            say.accept("An earlier run was killed and left its PostgreSQL running (process "
                    + orphan.get().pid() + "). It is being stopped cleanly; nothing it confirmed is lost.");
            stop(cluster, programs);
        }
    }

    // The number alone is not enough: after a reboot it may belong to some other program.
    private static boolean serves(ProcessHandle process, Path cluster) {
        return process.info()
                .commandLine()
                .filter(line -> line.contains("postgres") && line.contains(cluster.toString()))
                .isPresent();
    }

    private static Optional<String> firstLine(Path file) {
        try {
            List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
            return lines.stream().findFirst().map(String::strip);
        } catch (IOException e) {
            throw new CannotStart("The file " + file + " cannot be read: " + e, e);
        }
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new CannotStart("This machine has no free port on its loopback address: " + e, e);
        }
    }

    private void run() {
        Path log = folder.log("postgres.log");
        String settings = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=''"
                + " -c fsync=on -c synchronous_commit=on -c full_page_writes=on -c timezone=UTC"
                + " -c max_connections=200 -c log_checkpoints=off";
        try {
            programs.run(
                    "pg_ctl",
                    "start",
                    "-D",
                    folder.cluster().toString(),
                    "-l",
                    log.toString(),
                    "-o",
                    settings,
                    "-w",
                    "-t",
                    "300");
        } catch (CannotStart failed) {
            throw new CannotStart("PostgreSQL did not start. Its log " + log + " says why.\n" + failed.getMessage());
        }
    }

    /**
     * Opens a connection to the server's own database as its superuser.
     *
     * @return the connection, to be closed by the caller
     * @throws SQLException if the server does not answer
     */
    Connection connect(String database) throws SQLException {
        return DriverManager.getConnection(url(database), SUPERUSER, folder.secret(SUPERUSER_SECRET));
    }

    /**
     * The JDBC address of one database.
     *
     * @param database its name
     * @return the address without user and password
     */
    public String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
    }

    /** Stops the server cleanly: open connections are ended, what is confirmed is on the disk. */
    @Override
    public void close() {
        stop(folder.cluster(), programs);
    }

    private static void stop(Path cluster, PostgresPrograms programs) {
        programs.run("pg_ctl", "stop", "-D", cluster.toString(), "-m", "fast", "-w", "-t", "60");
    }
}
