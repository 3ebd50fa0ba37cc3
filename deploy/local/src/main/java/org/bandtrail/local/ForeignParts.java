package org.bandtrail.local;

import java.util.List;

/**
 * What a service must not pick up from its neighbours. Spring Boot switches a feature on when its library is on the
 * class path, and in this one process every service sees the libraries of all four: without these exclusions the
 * front desk's sign-in would guard the services' feeds. When a service runs from its own jar none of this applies.
 */
final class ForeignParts {

    private static final List<String> SIGN_IN = List.of(
            "org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration",
            "org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration",
            "org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration",
            "org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration");

    private static final List<String> PAGES =
            List.of("org.springframework.boot.thymeleaf.autoconfigure.ThymeleafAutoConfiguration");

    private ForeignParts() {}

    /**
     * The auto-configurations a service would not have if it were started alone.
     *
     * @param service the service
     * @return class names for {@code spring.autoconfigure.exclude}
     */
    static List<String> of(Service service) {
        return service == Service.FRONT_DESK
                ? List.of()
                : java.util.stream.Stream.concat(SIGN_IN.stream(), PAGES.stream())
                        .toList();
    }
}
