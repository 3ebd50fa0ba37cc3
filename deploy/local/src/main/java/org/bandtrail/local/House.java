package org.bandtrail.local;

import java.net.URI;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.bandtrail.local.season.SeasonClock;
import org.springframework.context.ConfigurableApplicationContext;

/** Everything that is running: the data folder, PostgreSQL, and the four services. Closing it stops all of it. */
public final class House implements AutoCloseable {

    private final DataFolder folder;
    private final Ports ports;
    private final PostgresServer server;
    private final Shutdown shutdown;
    private final SeasonClock clock = ClockWiring.clock();
    private final Map<Service, ConfigurableApplicationContext> contexts = new EnumMap<>(Service.class);

    private House(DataFolder folder, Ports ports, PostgresServer server, Shutdown shutdown) {
        this.folder = folder;
        this.ports = ports;
        this.server = server;
        this.shutdown = shutdown;
    }

    /**
     * Starts everything on a data folder.
     *
     * @param options where the data is and which ports to use
     * @param say where to tell a person what is happening
     * @return the running house
     * @throws CannotStart if any part cannot be started; what was started by then is stopped again
     */
    public static House start(LauncherOptions options, Consumer<String> say) {
        return start(options, say, new Shutdown());
    }

    /**
     * Starts everything and registers each part with the given shutdown as soon as it is up.
     *
     * @param options where the data is and which ports to use
     * @param say where to tell a person what is happening
     * @param shutdown closed by the house, or by somebody else while the house is still starting
     * @return the running house
     * @throws CannotStart if any part cannot be started; what was started by then is stopped again
     */
    static House start(LauncherOptions options, Consumer<String> say, Shutdown shutdown) {
        try {
            Ports ports = options.ports().claimed();
            DataFolder folder = shutdown.of(DataFolder.open(options.data()));
            PostgresServer server = shutdown.of(PostgresServer.start(folder, say));
            House house = new House(folder, ports, server, shutdown);
            for (Service service : Service.values()) {
                say.accept("Starting " + service.id() + " on " + house.at(service));
                house.contexts.put(service, shutdown.of(house.start(service)));
            }
            return house;
        } catch (RuntimeException failed) {
            shutdown.close();
            throw failed;
        }
    }

    private ConfigurableApplicationContext start(Service service) {
        ServiceDatabase database = ServiceDatabase.prepared(server, folder, service.database());
        return ServiceContext.start(service, folder, database, ports, clock);
    }

    /**
     * Where a service listens.
     *
     * @param service the service
     * @return its base address without a slash at the end
     */
    public URI at(Service service) {
        return Service.at(ports.of(service));
    }

    /**
     * The key with which services, and the loading of the season, prove that they belong here.
     *
     * @return the text after {@code Bearer} in the Authorization header
     */
    public String serviceKey() {
        return folder.secret("service-key");
    }

    /**
     * The clock of the three services that keep facts; the loading of the season sets it and sets it back.
     *
     * @return the one clock of this house
     */
    public SeasonClock clock() {
        return clock;
    }

    /**
     * The data folder in use.
     *
     * @return the open folder
     */
    public DataFolder folder() {
        return folder;
    }

    /**
     * The Spring context of a service.
     *
     * @param service the service
     * @return its running context
     */
    public ConfigurableApplicationContext context(Service service) {
        return Optional.ofNullable(contexts.get(service))
                .orElseThrow(() -> new IllegalStateException(service.id() + " is not running"));
    }

    /** Stops the services after the requests they are answering, then PostgreSQL, then lets go of the folder. */
    @Override
    public void close() {
        shutdown.close();
    }
}
