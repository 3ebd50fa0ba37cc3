package org.bandtrail.local;

import com.github.dockerjava.api.DockerClient;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** A PostgreSQL in a container that can be killed, started again with its data, and made to stand still. */
final class FaultyPostgres implements AutoCloseable {

    private final PostgreSQLContainer container = new PostgreSQLContainer("postgres:15");
    private final DockerClient engine = DockerClientFactory.instance().client();
    private final int port = freePort();

    FaultyPostgres() {
        // The port must be the same after a restart, and the server as careful as in production.
        container.setPortBindings(List.of("127.0.0.1:" + port + ":" + PostgreSQLContainer.POSTGRESQL_PORT));
        container.setCommand("postgres");
        container.start();
    }

    ServiceDatabase database() {
        String url = "jdbc:postgresql://127.0.0.1:" + port + "/" + container.getDatabaseName();
        return new ServiceDatabase(url, container.getUsername(), container.getPassword());
    }

    /** What a power cut does to the server: no goodbye, no last write. */
    void kill() {
        engine.killContainerCmd(container.getContainerId()).withSignal("KILL").exec();
    }

    void startAgain() {
        engine.startContainerCmd(container.getContainerId()).exec();
    }

    /** The server keeps its connections and answers nothing. */
    void standStill() {
        engine.pauseContainerCmd(container.getContainerId()).exec();
    }

    void goOn() {
        engine.unpauseContainerCmd(container.getContainerId()).exec();
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        container.close();
    }
}
