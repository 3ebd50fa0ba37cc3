package org.bandtrail.local;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.AutoConfigurationImportFilter;
import org.springframework.boot.autoconfigure.AutoConfigurationMetadata;
import org.springframework.context.EnvironmentAware;
import org.springframework.core.env.Environment;

/**
 * Keeps from a service what its neighbours brought along. Spring Boot switches a feature on when its library is on the
 * class path, and in this one process every service sees the libraries of all four: without this filter the front
 * desk's sign-in would guard the services' feeds. Spring Boot finds the filter through
 * {@code META-INF/spring.factories}; it does nothing in a service that runs from its own jar, because the launcher is
 * not there.
 */
public final class ForeignParts implements AutoConfigurationImportFilter, EnvironmentAware {

    private static final String PROPERTY = "bandtrail.launcher.foreign-parts";

    private static final List<String> OF_THE_FRONT_DESK = List.of(
            "org.springframework.boot.security.",
            "org.springframework.boot.thymeleaf.",
            "org.springdoc.core.configuration.SpringDocSecurityConfiguration");
    private static final List<String> OF_THE_SERVICES = List.of("org.springdoc.", "org.axonframework.");

    private List<String> foreign = List.of();

    /**
     * The setting by which the launcher tells a service's context what is foreign to it.
     *
     * @param service the service
     * @return a command-line argument
     */
    static String argumentFor(Service service) {
        List<String> packages = service == Service.FRONT_DESK ? OF_THE_SERVICES : OF_THE_FRONT_DESK;
        return "--" + PROPERTY + "=" + String.join(",", packages);
    }

    @Override
    public void setEnvironment(Environment environment) {
        foreign = List.of(environment.getProperty(PROPERTY, String[].class, new String[0]));
    }

    /** Says for each auto-configuration class whether the service may have it. */
    @Override
    public boolean[] match(@Nullable String[] classNames, AutoConfigurationMetadata metadata) {
        boolean[] own = new boolean[classNames.length];
        for (int i = 0; i < own.length; i++) {
            String name = classNames[i];
            own[i] = name != null && foreign.stream().noneMatch(name::startsWith);
        }
        return own;
    }
}
