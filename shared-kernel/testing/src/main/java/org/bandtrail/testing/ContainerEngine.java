package org.bandtrail.testing;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * Finds out in at most two seconds whether a Docker-compatible engine answers. Testcontainers finds out too, but it
 * tries every strategy it knows, takes half a minute, and prints a page of warnings where "no" is a normal answer.
 */
public final class ContainerEngine {
    private static final long PATIENCE_SECONDS = 2;
    private static final String PING = "GET /_ping HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";

    private ContainerEngine() {}

    /**
     * What was found.
     *
     * @param answers whether an engine is there
     * @param reason a sentence for people either way
     */
    public record Finding(boolean answers, String reason) {}

    /**
     * Asks DOCKER_HOST if it is set, otherwise the usual sockets that exist.
     *
     * @param environment the variables of this process
     * @return what was found, never an exception
     */
    public static Finding look(Map<String, String> environment) {
        String host = environment.get("DOCKER_HOST");
        if (host != null && !host.isBlank()) {
            return ask(host);
        }
        List<Path> sockets = usualSockets(environment);
        for (Path socket : sockets) {
            if (Files.exists(socket)) {
                return ask("unix://" + socket);
            }
        }
        return new Finding(false, "DOCKER_HOST is not set and there is no socket at %s".formatted(sockets));
    }

    private static List<Path> usualSockets(Map<String, String> environment) {
        List<Path> sockets = new ArrayList<>();
        sockets.add(Path.of("/var/run/docker.sock"));
        String runtime = environment.get("XDG_RUNTIME_DIR");
        if (runtime != null) {
            sockets.add(Path.of(runtime, "docker.sock"));
        }
        sockets.add(Path.of(System.getProperty("user.home"), ".docker", "run", "docker.sock"));
        return sockets;
    }

    private static Finding ask(String host) {
        SocketAddress address = address(host);
        if (address == null) {
            return new Finding(false, "DOCKER_HOST [%s] is neither unix:// nor tcp://".formatted(host));
        }
        CompletableFuture<String> answer = new CompletableFuture<>();
        Thread.ofVirtual().start(() -> {
            try {
                answer.complete(ping(address));
            } catch (IOException | RuntimeException silent) {
                answer.completeExceptionally(silent);
            }
        });
        try {
            String first = answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
            boolean up = first.startsWith("HTTP/1.1 200") || first.startsWith("HTTP/1.0 200");
            return new Finding(up, "the engine at %s answered [%s]".formatted(host, first));
        } catch (TimeoutException late) {
            return new Finding(false, "%s did not answer within %d s".formatted(host, PATIENCE_SECONDS));
        } catch (ExecutionException failed) {
            return new Finding(false, "%s did not answer: %s".formatted(host, failed.getCause()));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return new Finding(false, "the question to %s was interrupted".formatted(host));
        }
    }

    private static @Nullable SocketAddress address(String host) {
        URI uri = URI.create(host);
        return switch (uri.getScheme()) {
            case "unix" -> UnixDomainSocketAddress.of(uri.getPath());
            case "tcp", "http" -> new InetSocketAddress(uri.getHost(), uri.getPort() < 0 ? 2375 : uri.getPort());
            case null, default -> null;
        };
    }

    /** The status line of the engine's answer to a ping. */
    private static String ping(SocketAddress address) throws IOException {
        boolean unix = address instanceof UnixDomainSocketAddress;
        try (SocketChannel channel = unix ? SocketChannel.open(StandardProtocolFamily.UNIX) : SocketChannel.open()) {
            channel.connect(address);
            ByteBuffer question = ByteBuffer.wrap(PING.getBytes(StandardCharsets.US_ASCII));
            while (question.hasRemaining()) {
                channel.write(question);
            }
            byte[] answer = Channels.newInputStream(channel).readNBytes(256);
            return new String(answer, StandardCharsets.US_ASCII)
                    .lines()
                    .findFirst()
                    .orElse("nothing");
        }
    }
}
