package org.bandtrail.siteinstalls;

import org.bandtrail.eventexchange.EventExchangeWiring;
import org.bandtrail.eventstore.EventStoreWiring;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Import;

/**
 * Starts site-installs alone against a given PostgreSQL; {@code site-installs.properties} says what it needs to know.
 */
@SpringBootApplication
@Import({EventStoreWiring.class, EventExchangeWiring.class})
public class SiteInstallsApplication {

    /** Command line: any Spring Boot property, for example {@code --spring.datasource.url=jdbc:postgresql://...}. */
    public static void main(String[] arguments) {
        System.setProperty("spring.config.name", "site-installs");
        SpringApplication.run(SiteInstallsApplication.class, arguments);
    }
}
