package org.bandtrail.local;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;

/**
 * Starts a service in a Spring context of its own. Nothing is shared between the contexts but the Java classes: each
 * reads its own configuration file ({@code <service>.properties}), opens its own database and runs its own web server.
 */
final class ServiceContext {

    private ServiceContext() {}

    /**
     * Starts one service and returns when it answers. It waits for the feeds of the others by itself.
     *
     * @param service the service
     * @param folder where its secrets and log are
     * @param database its own database
     * @param ports where it and the others listen
     * @param clock what it takes the time from, unless it is the front desk
     * @return the running context
     * @throws CannotStart if it does not start
     */
    static ConfigurableApplicationContext start(
            Service service, DataFolder folder, ServiceDatabase database, Ports ports, Clock clock) {
        try {
            return new SpringApplicationBuilder(Class.forName(service.application()))
                    .bannerMode(Banner.Mode.OFF)
                    .web(WebApplicationType.SERVLET)
                    // One shutdown hook, the launcher's, ends everything in order: the pages first, the database last.
                    .registerShutdownHook(false)
                    .initializers(context -> giveClock(service, context, clock))
                    .run(arguments(service, folder, database, ports).toArray(String[]::new));
        } catch (ClassNotFoundException e) {
            throw new CannotStart("The class " + service.application() + " is not in this build.", e);
        } catch (RuntimeException e) {
            String why = service.id() + " did not start; the log " + folder.log("bandtrail.log") + " says more. ";
            throw new CannotStart(why + rootMessage(e), e);
        }
    }

    /** The services that keep facts take the time from the house; the web pages always show the real time. */
    private static void giveClock(Service service, ConfigurableApplicationContext context, Clock clock) {
        if (service != Service.FRONT_DESK && context instanceof GenericApplicationContext beans) {
            beans.registerBean(Clock.class, () -> clock);
        }
    }

    // Command-line arguments win over the service's own configuration file and over the environment.
    private static List<String> arguments(Service service, DataFolder folder, ServiceDatabase database, Ports ports) {
        List<String> arguments = new ArrayList<>(List.of(
                "--spring.config.name=" + service.id(),
                "--spring.application.name=" + service.id(),
                ForeignParts.argumentFor(service),
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password(),
                // With the database away a person is told so after a few seconds instead of half a minute.
                "--spring.datasource.hikari.connection-timeout=5000",
                "--spring.jmx.enabled=false",
                "--spring.lifecycle.timeout-per-shutdown-phase=10s",
                "--server.address=127.0.0.1",
                "--server.port=" + ports.of(service),
                "--server.shutdown=graceful",
                "--management.metrics.use-global-registry=false",
                "--bandtrail.service-key=" + folder.secret("service-key"),
                // One log for all: Spring Boot would put the name of whoever started first on every line.
                "--logging.include-application-name=false",
                "--logging.file.name=" + folder.log("bandtrail.log"),
                "--logging.threshold.console=off",
                "--logging.register-shutdown-hook=false"));
        for (Service other : Service.values()) {
            arguments.add("--bandtrail.feeds." + other.id() + ".url=" + Service.at(ports.of(other)));
        }
        return arguments;
    }

    private static String rootMessage(Throwable failure) {
        Throwable root = failure;
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            root = cause;
        }
        return String.valueOf(root.getMessage());
    }
}
